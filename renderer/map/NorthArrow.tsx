/** North is up on the sketch, always; the arrow says so. */
export function NorthArrow() {
  return (
    <svg
      className="north-arrow"
      width="26"
      height="64"
      viewBox="-13 0 26 64"
      role="img"
      aria-label="North is up"
    >
      <path d="M0 1L7.5 40L0 33Z" className="north-light" />
      <path d="M0 1L-7.5 40L0 33Z" className="north-dark" />
      <text y="60" textAnchor="middle">
        N
      </text>
    </svg>
  );
}
