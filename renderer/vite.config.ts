import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';

/** The engine's descriptions of its own functions, which the page never shows: 185 kB of texts. */
const withoutEngineHelp: Plugin = {
  name: 'without-engine-help',
  load: (id) =>
    id.endsWith('/hyperformula/es/interpreter/functionMetadata/index.mjs') ? 'export const FUNCTION_DOCS = {};' : null,
};

/** The page as static files: no inline script, no data links, hashed names; the licence list is a separate file. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  publicDir: false,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  plugins: [withoutEngineHelp],
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2024',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 3_000,
    license: true,
  },
});
