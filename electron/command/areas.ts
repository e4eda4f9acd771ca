import { formatAreaBoth, formatAreaSigma } from '../../core/units/index.ts';
import { resolveZones } from '../../core/zones/index.ts';
import { summaryOf, type ZoneSummary } from '../host/exporters/summary.ts';
import { openInput } from './openInput.ts';
import { badInput, badUsage, DONE, type ExitCode, sayProblems, type Voice } from './outcome.ts';
import { readArguments } from './readArguments.ts';
import { tableText } from './tableText.ts';
import { writeOutput } from './writeOutput.ts';

/** `platpace areas FILE [--json[=PATH]]` */
export async function runAreas(words: readonly string[], voice: Voice): Promise<ExitCode> {
  const read = readArguments(words, { json: 'joined-path' });
  if (!read.ok) return badUsage(voice, read.wrong, 'areas');
  const [file, ...more] = read.files;
  if (file === undefined || more.length > 0) return badUsage(voice, 'give one file', 'areas');
  const opened = await openInput(file);
  if (!opened.ok) return badInput(voice, opened.problems);
  const { yard, close, notes } = opened.value;
  close();
  const units = yard.details.unitSystem;
  const resolved = resolveZones(yard.outlines, yard.details.cornerSigmaM);
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
  const rowOf = (name: string, zone: Omit<ZoneSummary, 'name' | 'sigmaM2'>, sigma: string): string[] => [
    name,
    formatAreaBoth(zone.grossAreaM2, units),
    formatAreaBoth(zone.cutOutAreaM2, units),
    ...(summary.totals.ownedByOtherAreaM2 > 0 ? [formatAreaBoth(zone.ownedByOtherAreaM2, units)] : []),
    formatAreaBoth(zone.netAreaM2, units),
    `${formatAreaBoth(zone.treatedAreaM2, units)}${sigma}`,
  ];
  const owned = summary.totals.ownedByOtherAreaM2 > 0 ? ['owned by another zone'] : [];
  voice.out(
    tableText(
      ['zone', 'gross', 'cut-outs', ...owned, 'net', 'treated'],
      [
        ...summary.zones.map((zone) =>
          rowOf(zone.name, zone, zone.sigmaM2 === null ? '' : ` ${formatAreaSigma(zone.sigmaM2, units)}`),
        ),
        rowOf('total', summary.totals, ''),
      ],
    ),
  );
  return DONE;
}
