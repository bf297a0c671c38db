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
    rolldownOptions: {
      output: {
        // Schemas that two chunks share are made before the page's own modules run: what forbids zod to make code from
        // text goes with zod.
        advancedChunks: { groups: [{ name: 'zod', test: /node_modules\/zod\/|no-code-from-text/ }] },
      },
    },
  },
});
