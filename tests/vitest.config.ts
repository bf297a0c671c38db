import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const core = ['tests/shared-calc/**/*.test.ts', 'tests/published/**/*.test.ts', 'tests/fixtures/**/*.test.ts'];
// The page over a stand-in of the service tells of each place by itself what tests/browser shows of the whole program.
const long = [
  'tests/long/**/*.test.ts',
  'tests/browser/stand-in/bench-page.test.ts',
  'tests/renderer/books/book-place.test.ts',
  'tests/renderer/places/{money-places,quiet-places}.test.ts',
  'tests/renderer/places/prepare/prepare-page.test.ts',
];
// They put another shell in the place of the real one, or a folder of their own, for the whole of a process.
const apart = ['tests/electron/{main,preload,service}/**/*.test.ts'];
const all = ['tests/**/*.test.{ts,tsx}'];

/** Test files share a process, and with it what is loaded and the browser; those that cannot have one each. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    pool: 'forks',
    // The browser and the engine are other processes and mostly wait; one worker a core would leave cores idle.
    maxWorkers: 3,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // What is waited for comes in a moment here, and later on a busy machine.
    expect: { poll: { timeout: 15_000 } },
    projects: [
      { extends: true, test: { name: 'apart', include: apart } },
      {
        extends: true,
        test: {
          name: 'around',
          include: all,
          exclude: ['**/node_modules/**', ...core, ...apart, ...long],
          isolate: false,
        },
      },
      { extends: true, test: { name: 'core', include: core, isolate: false } },
      { extends: true, test: { name: 'long', include: long } },
    ],
  },
});
