/**
 * The sketch: the yard drawn in ink over a Leaflet map, and the line at its foot. The only folder that imports
 * Leaflet. In: the yard, what was worked out from it, what the hand is doing; out: what the hand does next.
 * Method: yard metres are carried to the web map's plane through longitude and latitude, a loose yard round
 * (0, 0), so that one code path serves both; all that is seen is SVG of ours in two of the map's panes.
 * Out of scope: measuring (`core`), what an input means (`renderer/drawing`).
 */
export { ChangeSwatch, type DrawnChange } from './ChangeLayer.tsx';
export { CoverSwatch } from './CoverLayer.tsx';
export { FootLine } from './FootLine.tsx';
export { NorthArrow } from './NorthArrow.tsx';
export { ScaleBar } from './ScaleBar.tsx';
export { Sketch, type SketchProps } from './Sketch.tsx';
