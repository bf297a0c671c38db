import { fileURLToPath } from 'node:url';

import { defineConfig } from 'vite';

/**
 * Bundles the command line into as few and as small files as possible, so that it starts fast; what only `start` needs
 * is separate. CommonJS, because linking a file of this size as a module takes Node a sixth of the start time.
 */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  publicDir: false,
  ssr: { noExternal: true, external: ['better-sqlite3', 'electron'] },
  build: {
    ssr: true,
    outDir: 'electron/dist',
    emptyOutDir: false,
    target: 'node24',
    minify: true,
    rollupOptions: {
      input: fileURLToPath(new URL('./one-file.ts', import.meta.url)),
      output: { format: 'cjs', entryFileNames: 'command-line.cjs', chunkFileNames: 'command-line-[name].cjs' },
    },
  },
});
