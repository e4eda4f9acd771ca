import { spawnSync } from 'node:child_process';
import type { LonLat } from '../../core/spaces.ts';

export interface Planimetered {
  readonly perimeterM: number;
  readonly areaM2: number;
}

/** Debian's Planimeter (GeographicLib) over all rings in one run: areas to 1e-4 m², perimeters to 1e-9 m as printed. */
export function planimeter(rings: readonly (readonly LonLat[])[]): readonly Planimetered[] {
  const input = rings
    .map((ring) => ring.map(({ latDeg, lonDeg }) => `${degrees(latDeg)} ${degrees(lonDeg)}`).join('\n'))
    .join('\n\n');
  const ended = spawnSync('Planimeter', ['-p', '9'], {
    input: `${input}\n`,
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  });
  if (ended.error !== undefined || ended.status !== 0) {
    const said = ended.error?.message ?? ended.stderr;
    throw new Error(`Planimeter cannot be run; on Debian: apt-get install geographiclib-tools. ${said}`);
  }
  const lines = ended.stdout.trim().split('\n');
  if (lines.length !== rings.length) throw new Error(`${lines.length} answers for ${rings.length} rings`);
  return lines.map((line) => {
    const [, perimeterM, areaM2] = line.split(' ').map(Number);
    return { perimeterM: perimeterM ?? Number.NaN, areaM2: areaM2 ?? Number.NaN };
  });
}

/** 1e-15° is 0.1 nm; the program reads no exponents. */
function degrees(deg: number): string {
  return deg.toFixed(15);
}
