import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const core = ['tests/shared-calc/**/*.test.ts', 'tests/published/**/*.test.ts', 'tests/fixtures/**/*.test.ts'];
const all = ['tests/**/*.test.{ts,tsx}'];

/** What is pure keeps no state, so its test files share a process; all others have one each. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    pool: 'forks',
    testTimeout: 60_000,
    hookTimeout: 120_000,
    projects: [
      { extends: true, test: { name: 'core', include: core, isolate: false } },
      { extends: true, test: { name: 'around it', include: all, exclude: ['**/node_modules/**', ...core] } },
    ],
  },
});
