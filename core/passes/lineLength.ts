import type { YardPoint } from '../spaces.ts';

/** Length of a walked line. */
export function lineLengthM(line: readonly YardPoint[]): number {
  let lengthM = 0;
  line.forEach((to, i) => {
    const from = line[i - 1];
    if (from !== undefined) lengthM += Math.hypot(to.xM - from.xM, to.yM - from.yM);
  });
  return lengthM;
}
