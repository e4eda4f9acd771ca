/**
 * The drafting hatches, one for each kind and one for missed ground, so that they are told apart without colour. Sizes are pixels:
 * a hatch is ink on the page, not something lying in the yard, and does not grow when one looks closer.
 */
export function Hatches() {
  return (
    <defs>
      <pattern
        id="hatch-bed"
        width="8"
        height="8"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="8" height="8" className="hatch-paper" />
        <path d="M4 0V8" className="hatch-bed" />
      </pattern>
      <pattern id="hatch-hardscape" width="22" height="16" patternUnits="userSpaceOnUse">
        <rect width="22" height="16" className="hatch-paper" />
        <path d="M0 .5H22M0 8.5H22M5.5 .5V8.5M16.5 8.5V16.5" className="hatch-hardscape" />
      </pattern>
      <pattern
        id="hatch-building"
        width="13"
        height="13"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="13" height="13" className="hatch-paper" />
        <path d="M6.5 0V13" className="hatch-building" />
      </pattern>
      <pattern id="hatch-water" width="28" height="12" patternUnits="userSpaceOnUse">
        <rect width="28" height="12" className="hatch-paper" />
        <path d="M0 3q3.5 -3 7 0t7 0M14 9q3.5 -3 7 0t7 0" className="hatch-water" />
      </pattern>
      <pattern
        id="hatch-tree"
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(-45)"
      >
        <rect width="7" height="7" className="hatch-paper" />
        <path d="M3.5 0V7" className="hatch-bed" />
      </pattern>
      <pattern id="hatch-overlap" width="9" height="9" patternUnits="userSpaceOnUse">
        <path d="M4.5 0V9" className="hatch-overlap" />
      </pattern>
      <pattern
        id="hatch-keep-off"
        width="11"
        height="11"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d="M5.5 0V11M0 5.5H11" className="hatch-keep-off" />
      </pattern>
      <pattern id="hatch-missed" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" className="hatch-paper" />
        <path d="M0 2.5H5" className="hatch-missed" />
      </pattern>
    </defs>
  );
}
