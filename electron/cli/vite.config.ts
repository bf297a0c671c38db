import { fileURLToPath } from 'node:url';

import { defineConfig } from 'vite';

/** The command line as one file, so that a command starts in a third of the time: the book's driver stays outside. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  publicDir: false,
  ssr: { noExternal: true, external: ['better-sqlite3', 'electron'] },
  build: {
    ssr: true,
    outDir: 'electron/dist',
    emptyOutDir: false,
    target: 'node24',
    rollupOptions: {
      input: fileURLToPath(new URL('./one-file.ts', import.meta.url)),
      output: { format: 'es', entryFileNames: 'command-line.js', codeSplitting: false },
    },
  },
});
