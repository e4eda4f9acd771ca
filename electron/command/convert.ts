import { existsSync, renameSync, rmSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import type { Problem } from '../../core/problems.ts';
import type { Yard } from '../../core/yard.ts';
import { geoJsonText, yardToGeoJson } from '../host/exporters/geoJson.ts';
import { leftBehindIn } from '../host/exporters/leftBehind.ts';
import { diskProblem, openInput } from './openInput.ts';
import { badInput, badUsage, DONE, type ExitCode, type Voice } from './outcome.ts';
import { readArguments } from './readArguments.ts';
import { writeOutput } from './writeOutput.ts';

/** `platpace convert IN OUT [--replace] [--json]` */
export async function runConvert(words: readonly string[], voice: Voice): Promise<ExitCode> {
  const read = readArguments(words, { replace: 'alone', json: 'alone' });
  if (!read.ok) return badUsage(voice, read.wrong, 'convert');
  const [from, to, ...more] = read.files;
  if (from === undefined || to === undefined || more.length > 0) {
    return badUsage(voice, 'give the file to read and the file to write', 'convert');
  }
  const target = /\.gpkg$/i.test(to) ? 'yard-file' : /\.(geo)?json$/i.test(to) ? 'geojson' : null;
  if (target === null) return badUsage(voice, 'OUT ends in .gpkg, .geojson or .json', 'convert');
  if (resolve(from) === resolve(to)) return badUsage(voice, 'IN and OUT are the same file', 'convert');
  const fileName = basename(to);
  if (existsSync(to) && !read.flags.has('replace')) {
    return badInput(voice, [{ kind: 'file/exists', where: { fileName }, facts: {} }]);
  }
  const opened = await openInput(from);
  if (!opened.ok) return badInput(voice, opened.problems);
  const { yard, notes, close, from: source } = opened.value;
  close();
  if (source === target) return badUsage(voice, 'IN and OUT are of the same kind; copy the file', 'convert');

  const problems = target === 'geojson' ? writeGeoJson(to, yard) : await writeYardFile(to, yard);
  if (problems !== null) return badInput(voice, problems, yard.details.unitSystem);
  const leftBehind = target === 'geojson' ? leftBehindIn(yard) : [];
  const outlines = yard.outlines.length;
  const points = yard.marks.length;
  if (read.flags.has('json')) {
    voice.out(`${JSON.stringify({ wrote: to, outlines, points, leftBehind, notes }, null, 2)}\n`);
    return DONE;
  }
  for (const note of notes) voice.err(`${note}\n`);
  if (leftBehind.length > 0) voice.err(`Not in GeoJSON: ${leftBehind.join(', ')}.\n`);
  voice.out(`wrote ${to}: outlines ${outlines}, points ${points}\n`);
  return DONE;
}

function writeGeoJson(path: string, yard: Yard): readonly Problem[] | null {
  const made = yardToGeoJson(yard, basename(path));
  if (!made.ok) return made.problems;
  const written = writeOutput(path, geoJsonText(made.value));
  return written.ok ? null : written.problems;
}

/** A yard file is made beside its place and moved there; one that is open for writing is not replaced. */
async function writeYardFile(path: string, yard: Yard): Promise<readonly Problem[] | null> {
  const { createYardFile, openYardFile } = await import('../host/yardFile/index.ts');
  if (!existsSync(path)) {
    const made = createYardFile(path, yard, []);
    if (!made.ok) return made.problems;
    made.value.close();
    return null;
  }
  const old = openYardFile(path);
  if (!old.ok && old.problems[0].kind === 'file/locked') return old.problems;
  if (old.ok) old.value.close();
  const beside = `${resolve(path)}.${process.pid}.part.gpkg`;
  const made = createYardFile(beside, yard, []);
  if (!made.ok) return made.problems;
  made.value.close();
  try {
    renameSync(beside, path);
    return null;
  } catch (error) {
    rmSync(beside, { force: true });
    return [diskProblem(error, basename(path))];
  }
}
