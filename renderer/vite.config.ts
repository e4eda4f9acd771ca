import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The page must run under a policy without inline scripts or data: addresses, from a server or from files. */
export default defineConfig({
  root: new URL('.', import.meta.url).pathname,
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 2_000,
  },
});
