import { ok, type Result, trouble } from '../../core/result.ts';
import {
  fineLengthFigure,
  metres,
  type LengthUnit,
  type Metres,
  parseLength,
} from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';

/** No walker's step is shorter or longer; what is typed beyond was meant otherwise. */
const SHORTEST_M = 0.1;
const LONGEST_M = 2;

const FIELD = 'length of one step';
/** "20 steps in 50 ft": steps counted over a length that was taped. */
const COUNTED = /^\s*(\d+)\s*steps?\s+(?:in|over|on)\s+(.+)$/i;

/** The length of one step as typed: a length, or how many were counted over one. */
export function parseStep(typed: string, unit: LengthUnit, units: UnitSystem): Result<Metres> {
  const counted = COUNTED.exec(typed);
  const read = parseLength(counted?.[2] ?? typed, FIELD, unit);
  if (!read.ok) return read;
  const stepM = read.value / Number(counted?.[1] ?? 1);
  if (stepM >= SHORTEST_M && stepM <= LONGEST_M) return ok(metres(stepM));
  const shown = (lengthM: number): number => Number(fineLengthFigure(lengthM, units).text);
  const facts = { least: shown(SHORTEST_M), most: shown(LONGEST_M), unit: fineLengthFigure(0, units).unit };
  return trouble({ kind: 'value/out-of-range', where: { field: FIELD }, facts });
}
