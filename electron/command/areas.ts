import { formatArea, formatAreaSigma, otherUnits } from '../../core/units/index.ts';
import { AMOUNTS_BY_WORDS } from '../../core/slope/index.ts';
import type { YardDetails } from '../../core/yard.ts';
import {
  balanceWords,
  type PrintedAreas,
  printedSum,
  printedZones,
  unstatedWords,
  type ResolvedYard,
  resolveZones,
  yardWorkingText,
} from '../../core/zones/index.ts';
import { summaryOf } from '../host/exporters/summary.ts';
import { openInput } from './openInput.ts';
import { badInput, badUsage, DONE, type ExitCode, sayProblems, type Voice } from './outcome.ts';
import { readArguments } from './readArguments.ts';
import { tableText } from './tableText.ts';
import { writeOutput } from './writeOutput.ts';

/** `platpace areas FILE [--json[=PATH] | --working]` */
export async function runAreas(words: readonly string[], voice: Voice): Promise<ExitCode> {
  const read = readArguments(words, { json: 'joined-path', working: 'alone' });
  if (!read.ok) return badUsage(voice, read.wrong, 'areas');
  const [file, ...more] = read.files;
  if (file === undefined || more.length > 0) return badUsage(voice, 'give one file', 'areas');
  if (read.flags.has('json') && read.flags.has('working')) {
    return badUsage(voice, 'give --json or --working, not both', 'areas');
  }
  const opened = await openInput(file);
  if (!opened.ok) return badInput(voice, opened.problems);
  const { yard, close, notes } = opened.value;
  close();
  const units = yard.details.unitSystem;
  const resolved = resolveZones(yard);
  if (!resolved.ok) return badInput(voice, resolved.problems, units);
  const summary = summaryOf(yard, resolved.value);

  const path = read.flags.get('json');
  if (path !== undefined) {
    const text = `${JSON.stringify(summary, null, 2)}\n`;
    if (path === '' || path === '-') voice.out(text);
    else {
      const written = writeOutput(path, text);
      if (!written.ok) return badInput(voice, written.problems);
    }
    return DONE;
  }
  for (const note of notes) voice.err(`${note}\n`);
  sayProblems(voice, resolved.value.warnings, units);
  voice.out(areaTable(resolved.value, yard.details));
  if (read.flags.has('working')) voice.out(`\n${yardWorkingText(resolved.value, yard)}`);
  return DONE;
}

/** The schedule in both unit systems, rounded as on the screen and the sheet, so that rows and columns add up. */
function areaTable(resolved: ResolvedYard, { unitSystem: units, amountsBy }: YardDetails): string {
  const other = otherUnits(units);
  const zones = printedZones(resolved, units);
  const others = printedZones(resolved, other);
  const unstated = unstatedWords(zones);
  const anySlopes = resolved.zones.some((zone) => zone.slope !== null);
  const anyOwned = zones.some((zone) => zone.ownedByOtherM2 > 0);
  const rowOf = (name: string, zone: PrintedAreas, same: PrintedAreas): string[] => {
    const both = (areaOf: (from: PrintedAreas) => number): string =>
      `${formatArea(areaOf(zone), units)} (${formatArea(areaOf(same), other)})`;
    const sigma = zone.sigmaM2 === null ? '' : ` ${formatAreaSigma(zone.sigmaM2, units)}`;
    return [
      name,
      both((from) => from.grossM2),
      both((from) => from.cutOutM2),
      ...(anyOwned ? [both((from) => from.ownedByOtherM2)] : []),
      both((from) => from.turfM2),
      `${both((from) => from.treatedM2)}${sigma}`,
      ...(anySlopes ? [both((from) => from.surfaceM2)] : []),
    ];
  };
  const table = tableText(
    [
      'zone',
      'gross',
      'cut-outs',
      ...(anyOwned ? ['owned by another zone'] : []),
      'turf',
      'treated',
      ...(anySlopes ? ['its surface'] : []),
    ],
    [
      ...zones.map((zone, i) => rowOf(zone.name, zone, others[i] ?? zone)),
      rowOf('total', printedSum(zones), printedSum(others)),
    ],
  );
  return [
    table,
    ...(anyOwned ? [`${balanceWords(printedSum(zones), units)}\n`] : []),
    ...(unstated === undefined ? [] : [`${unstated}: no area is exact\n`]),
    ...(anySlopes ? [`amounts are worked out from ${AMOUNTS_BY_WORDS[amountsBy]}\n`] : []),
  ].join('');
}
