import { checkCarrier, checkRate } from '../../core/products/index.ts';
import { problemText } from '../../core/problemText.ts';
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import type { UnitSystem, Yard } from '../../core/yard.ts';
import { checkOutline, resolveZones } from '../../core/zones/index.ts';
import { openInput } from './openInput.ts';
import { BAD_INPUT, badInput, badUsage, DONE, type ExitCode, type Voice } from './outcome.ts';
import { readArguments } from './readArguments.ts';
import { writeOutput } from './writeOutput.ts';

interface Findings {
  readonly problems: readonly Problem[];
  readonly warnings: readonly Problem[];
}

/** `platpace check FILE [--json[=PATH]]` */
export async function runCheck(words: readonly string[], voice: Voice): Promise<ExitCode> {
  const read = readArguments(words, { json: 'joined-path' });
  if (!read.ok) return badUsage(voice, read.wrong, 'check');
  const [file, ...more] = read.files;
  if (file === undefined || more.length > 0) return badUsage(voice, 'give one file', 'check');
  const opened = await openInput(file);
  if (opened.ok) opened.value.close();
  const yard = opened.ok ? opened.value.yard : null;
  const notes = opened.ok ? opened.value.notes : [];
  const findings = opened.ok ? findingsIn(opened.value.yard) : { problems: opened.problems, warnings: [] };
  const units = yard?.details.unitSystem ?? 'metric';
  const code = findings.problems.length > 0 ? BAD_INPUT : DONE;

  const path = read.flags.get('json');
  if (path !== undefined) {
    const worded = (problem: Problem) => ({ ...problem, ...problemText(problem, units) });
    const { problems, warnings } = findings;
    const report = { problems: problems.map(worded), warnings: warnings.map(worded), notes };
    const text = `${JSON.stringify(report, null, 2)}\n`;
    if (path !== '' && path !== '-') {
      const written = writeOutput(path, text);
      if (!written.ok) return badInput(voice, written.problems);
    } else voice.out(text);
    return code;
  }
  voice.out(findingsText(findings, notes, units));
  return code;
}

function findingsText({ problems, warnings }: Findings, notes: readonly string[], units: UnitSystem): string {
  const lineOf = (mark: string) => (problem: Problem) => {
    const { what, mend } = problemText(problem, units);
    return `${mark}: ${what} ${mend}\n`;
  };
  const lines = [
    ...problems.map(lineOf('wrong')),
    ...warnings.map(lineOf('doubtful')),
    ...notes.map((note) => `note: ${note}\n`),
  ];
  const isClean = problems.length + warnings.length === 0;
  return `${lines.join('')}${isClean ? 'nothing wrong, nothing doubtful\n' : ''}`;
}

function findingsIn(yard: Yard): Findings {
  const problems: Problem[] = yard.outlines.flatMap((outline) => problemsOf(checkOutline(outline)));
  const warnings: Problem[] = [];
  if (problems.length === 0) {
    const resolved = resolveZones(yard);
    if (resolved.ok) {
      warnings.push(...resolved.value.warnings);
      if (resolved.value.zones.length === 0) {
        warnings.push({ kind: 'plan/nothing-to-treat', where: { thing: yard.details.name }, facts: {} });
      }
    } else problems.push(...resolved.problems);
  }
  for (const picture of yard.pictures) {
    if (picture.placement.kind !== 'unscaled') continue;
    warnings.push({ kind: 'value/no-scale', where: { field: picture.name }, facts: {} });
  }
  for (const job of yard.jobs) {
    const product = yard.products.find((each) => each.id === job.productId);
    const applicator = yard.applicators.find((each) => each.id === job.applicatorId);
    if (product === undefined || applicator === undefined) {
      const field = `${job.name}: ${product === undefined ? 'the product' : 'the applicator'}`;
      problems.push({ kind: 'value/missing', where: { field }, facts: {} });
      continue;
    }
    for (const label of [
      checkRate(product, null),
      checkCarrier(product, applicator.carrierLPerM2, applicator.name),
    ]) {
      if (label.ok) warnings.push(...label.value);
      else problems.push(...label.problems);
    }
  }
  return { problems, warnings };
}

function problemsOf(checked: Result<unknown>): readonly Problem[] {
  return checked.ok ? [] : checked.problems;
}
