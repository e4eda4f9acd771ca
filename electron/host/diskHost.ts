import { readFileSync } from 'node:fs';
import { draftImport, draftYard } from './importers/index.ts';
import { type Host, makeHost } from './makeHost.ts';
import { sampleYard } from './sample.ts';
import { createYardFile, openYardFile } from './yardFile/index.ts';
import { defaultYardsFolder } from './yardsFolder.ts';

/** The host over real files, for both carriers. @param startPath the yard file named at the start, if any */
export function openDiskHost(startPath: string | null, environment: NodeJS.ProcessEnv): Host {
  return makeHost({
    version: ownVersion(),
    yardsFolder: defaultYardsFolder(environment),
    startPath,
    shop: { open: openYardFile, create: createYardFile },
    importers: { draftYard, draftImport },
    sample: sampleYard,
  });
}

/** The same two steps up from here and from where this is bundled to (dist/shell). */
function ownVersion(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { readonly version: string }).version;
}
