import { fileURLToPath } from 'node:url';

import { defineConfig } from 'vite';

/** The desktop's own code as one file; Electron and the database driver stay external. */
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
      input: fileURLToPath(new URL('./main.ts', import.meta.url)),
      output: { format: 'es', entryFileNames: 'main.js' },
    },
  },
});
