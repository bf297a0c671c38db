import { fileURLToPath } from 'node:url';

import { defineConfig } from 'vite';

/** The command line in as few files as it may be, so that it starts at once; what only `start` needs stands apart. */
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
      output: { format: 'es', entryFileNames: 'command-line.js', chunkFileNames: 'command-line-[name].js' },
    },
  },
});
