import { fileURLToPath } from 'node:url';

import { defineConfig } from 'vite';

/**
 * The command line in as few and as small files as it may be, so that it starts at once; what only `start` needs stands
 * apart. CommonJS, since Node takes a sixth of the whole start to link such a file as a module.
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
