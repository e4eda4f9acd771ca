import { basename, resolve } from 'node:path';
import type { Problem } from '../../core/problems.ts';
import { layoutSheet } from '../../core/sheet/index.ts';
import { geoJsonText } from '../host/exporters/geoJson.ts';
import { planToGeoJson } from '../host/exporters/planGeoJson.ts';
import { hoseFigures } from './hoseFigures.ts';
import { flagsText } from './flagsText.ts';
import { makePlan, type MadePlan } from './makePlan.ts';
import { type OpenedInput, openInput } from './openInput.ts';
import { BAD_INPUT, badInput, badUsage, DONE, type ExitCode, sayProblems, type Voice } from './outcome.ts';
import { PLAN_FLAGS, type PlanFlags, readPlanFlags } from './planFlags.ts';
import { planText } from './planText.ts';
import { slowProgress } from './progress.ts';
import { readArguments } from './readArguments.ts';
import { writeOutput } from './writeOutput.ts';

/** `platpace plan FILE …`; the flags are in help.ts. */
export async function runPlan(words: readonly string[], voice: Voice): Promise<ExitCode> {
  const read = readArguments(words, PLAN_FLAGS);
  if (!read.ok) return badUsage(voice, read.wrong, 'plan');
  const [file, ...more] = read.files;
  if (file === undefined || more.length > 0) return badUsage(voice, 'give one file', 'plan');
  const flags = readPlanFlags(read);
  if (flags.ok === 'wrong') return badUsage(voice, flags.wrong, 'plan');
  if (!flags.ok) {
    sayProblems(voice, flags.problems);
    return badUsage(voice, 'a value cannot be used', 'plan');
  }
  for (const path of [flags.value.json, flags.value.pdf]) {
    if (path !== undefined && path !== '' && resolve(path) === resolve(file)) {
      return badUsage(voice, `${basename(path)} is the file to plan and would be lost`, 'plan');
    }
  }
  const opened = await openInput(file);
  if (!opened.ok) return badInput(voice, opened.problems);
  try {
    return await planAndWrite(opened.value, flags.value, voice);
  } finally {
    opened.value.close();
  }
}

async function planAndWrite(
  { yard, notes, readImage }: OpenedInput,
  flags: PlanFlags,
  voice: Voice,
): Promise<ExitCode> {
  const units = yard.details.unitSystem;
  for (const note of notes) voice.err(`${note}\n`);
  const made = makePlan(yard, flags, { onProgress: slowProgress(voice, 'planning') });
  if (made === undefined) {
    const wrong =
      yard.jobs.length > 0
        ? '--load-area and --swath go together'
        : 'the file has no job; give --load-area and --swath';
    return badUsage(voice, wrong, 'plan');
  }
  if (!made.ok) return badInput(voice, made.problems, units);
  const { ground } = made.value.plan;
  sayProblems(voice, [...ground.resolved.warnings, ...ground.warnings], units);

  if (flags.json !== undefined) {
    const hose = hoseFigures(ground);
    const more = hose === null ? {} : { hose };
    const isFile = flags.json !== '' && flags.json !== '-';
    const geoJson = planToGeoJson(yard, ground, isFile ? basename(flags.json) : 'the plan’s JSON', more);
    if (!geoJson.ok) return badInput(voice, geoJson.problems, units);
    const text = geoJsonText(geoJson.value);
    if (flags.json === '' || flags.json === '-') voice.out(text);
    else {
      const written = writeOutput(flags.json, text);
      if (!written.ok) return badInput(voice, written.problems, units);
    }
  }
  if (flags.pdf !== undefined) {
    const problems = await writeSheet(flags.pdf, made.value, flags, readImage);
    if (problems !== null) {
      sayProblems(voice, problems, units);
      return BAD_INPUT;
    }
  }
  const isJsonOnOut = flags.json === '' || flags.json === '-';
  if (!isJsonOnOut) {
    voice.out(planText(made.value));
    if (flags.withFlags) voice.out(flagsText(yard, ground));
  }
  return DONE;
}

async function writeSheet(
  path: string,
  { yard, job, plan }: MadePlan,
  flags: PlanFlags,
  readImage: OpenedInput['readImage'],
): Promise<readonly Problem[] | null> {
  // Loaded only here: the PDF library takes longer to load than a small yard to plan.
  const { writePdf } = await import('../host/pdf/writePdf.ts');
  const paper = flags.paper ?? (yard.details.unitSystem === 'us' ? 'letter' : 'a4');
  const madeAt = new Date().toISOString();
  const pages = layoutSheet({ yard, plan, job, paper, scale: 'auto', madeOn: madeAt.slice(0, 10) });
  if (!pages.ok) return pages.problems;
  const pdf = await writePdf(pages.value, { title: `${yard.details.name}: ${job.name}`, madeAt, readImage });
  if (!pdf.ok) return pdf.problems;
  const written = writeOutput(path, pdf.value);
  return written.ok ? null : written.problems;
}
