import type { Elevation, PictureCorners } from '../../core/yard.ts';

/** A level-lying grid from its south-west node, columns and rows `spacingM` apart; heights by a function, in metres. */
export function elevationOf(
  westM: number,
  southM: number,
  columns: number,
  rows: number,
  spacingM: number,
  heightAt: (xM: number, yM: number) => number | null,
): Elevation {
  const [eastM, northM] = [westM + (columns - 1) * spacingM, southM + (rows - 1) * spacingM];
  const corners: PictureCorners = [
    { xM: westM, yM: northM },
    { xM: eastM, yM: northM },
    { xM: eastM, yM: southM },
    { xM: westM, yM: southM },
  ];
  const heightsMm = Array.from({ length: columns * rows }, (_, node) => {
    const xM = westM + (node % columns) * spacingM;
    const yM = northM - Math.floor(node / columns) * spacingM;
    const heightM = heightAt(xM, yM);
    return heightM === null ? null : Math.round(heightM * 1000);
  });
  return { id: 'heights', name: 'heights', columns, rows, corners, heightsMm };
}
