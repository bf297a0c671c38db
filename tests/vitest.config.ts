import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const core = ['tests/shared-calc/**/*.test.ts', 'tests/published/**/*.test.ts', 'tests/fixtures/**/*.test.ts'];
// These test each view over a stand-in for the service; tests/browser tests the same on the whole program.
const long = [
  'tests/long/**/*.test.ts',
  'tests/browser/stand-in/bench-page.test.ts',
  // Slow ones of the whole program; the others of their folders show the usual way.
  'tests/browser/{asked-and-said,box-states,bridge,cards-on-paper,drawing,first-quote,grid-hands,hostile,house-change,killed-service,main-job,paste,rule-faults,two-windows,whole-life,whole-life-by-keys}.test.ts',
  'tests/electron/host/killed-host.test.ts',
  'tests/faults/kills.test.ts',
  'tests/renderer/store/rename-every-line.test.ts',
  'tests/renderer/books/book-place.test.ts',
  'tests/renderer/places/{money-places,quiet-places}.test.ts',
  'tests/renderer/places/prepare/prepare-page.test.ts',
  'tests/renderer/places/jobs/survey-page.test.ts',
];
// These replace the shell or start without the graph engine, for the whole of a process.
const apart = ['tests/electron/{main,preload}/**/*.test.ts', 'tests/renderer/store/bench-engine.test.ts'];
const all = ['tests/**/*.test.{ts,tsx}'];

/**
 * Test files share a process, with its modules and its browser. Those that cannot share run in a process of their own.
 */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    pool: 'forks',
    // The browser and the engine are other processes and mostly wait; one worker per core would leave cores idle.
    maxWorkers: 3,
    // A book of the user's own is made where none is named; here it is the tests' own.
    // Programs that tests start find their code compiled by the first of them.
    env: {
      XDG_DATA_HOME: join(tmpdir(), `loamwright-own-${process.pid}`),
      NODE_COMPILE_CACHE: join(tmpdir(), 'loamwright-compiled'),
    },
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // A poll succeeds almost at once here, and later on a busy machine.
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
