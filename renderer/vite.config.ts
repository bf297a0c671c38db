import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** The page as static files: no inline script, no data links, hashed names; the licence list is a separate file. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  publicDir: false,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
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
