import { fileURLToPath } from 'node:url';

import { defineConfig } from 'vite';

/** The page's door as one file of the older kind: a preload in the sandbox can be nothing else. */
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
