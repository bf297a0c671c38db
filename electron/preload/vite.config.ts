import { fileURLToPath } from 'node:url';

import { defineConfig } from 'vite';

/** The preload script as one CommonJS file: a sandboxed preload cannot be a module. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  publicDir: false,
  ssr: { noExternal: true, external: ['electron'] },
  build: {
    ssr: true,
    outDir: 'electron/dist',
    emptyOutDir: false,
    target: 'node24',
    rollupOptions: {
      input: fileURLToPath(new URL('./preload.ts', import.meta.url)),
      output: { format: 'cjs', entryFileNames: 'preload.cjs' },
    },
  },
});
