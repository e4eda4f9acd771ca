// Bundles the Electron shell: dist/shell/main.mjs (with the host, packages left outside) and the preload as one
// CommonJS file, the only form a sandboxed preload may have. Runs on the Node of node_modules, which vite needs.
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** Another place for the bundle may be named, to look at it without replacing the one in use. */
const outDir = process.argv[2] ?? 'dist/shell';

/** A thread is started by the address of its file beside the one that starts it; bundled, both lie in dist/shell. */
const threadAddresses = {
  name: 'thread-addresses',
  enforce: 'pre',
  transform: (code) =>
    code.replaceAll(
      /new URL\('\.\/(\w+Thread)\.ts', import\.meta\.url\)/g,
      "new URL('./$1.mjs', import.meta.url)",
    ),
};

async function bundle(entries, format, extension, external) {
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    plugins: [threadAddresses],
    ssr: external ? { external: true } : { noExternal: true },
    build: {
      ssr: true,
      target: 'node24',
      minify: false,
      outDir,
      emptyOutDir: false,
      rolldownOptions: {
        input: entries,
        external: ['electron'],
        output: { format, entryFileNames: `[name].${extension}`, chunkFileNames: `[name].${extension}` },
      },
    },
  });
}

await bundle(
  ['electron/shell/main.ts', 'electron/host/importers/geoTiff/geoTiffThread.ts'],
  'es',
  'mjs',
  true,
);
await bundle(['electron/shell/preload.ts'], 'cjs', 'cjs', false);
