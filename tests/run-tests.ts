import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';
import { bringBrowser } from '#tests/browser/find-browser.ts';
import { closingLine, countEnding, countReport, type Count } from '#tests/closing-line.ts';

/*
 * `npm test`: prepares what the tests need, runs them, and ends with `N passed, N failed`.
 * Arguments are passed on to vitest; `--long` runs the slow tests of tests/long instead of the usual ones.
 */

const root = fileURLToPath(new URL('..', import.meta.url));
const given = process.argv.slice(2);
const long = given.includes('--long');
const nothing: Count = { passed: 0, failed: 0, skipped: 0 };

const Report = z.object({
  numPassedTests: z.number(),
  numFailedTests: z.number(),
  numPendingTests: z.number(),
  numTodoTests: z.number(),
  testResults: z.array(z.object({ status: z.string(), assertionResults: z.array(z.object({ status: z.string() })) })),
});

const pageFault = buildPage();
// Without a browser, every test file that needs one fails by itself and says so.
if (runs('tests/browser') || runs('tests/renderer')) await bringBrowser(console.log);
const count = runVitest();
const failed = count.failed + pageFault.failed;
console.log(closingLine({ ...count, failed }));
process.exitCode = failed > 0 ? 1 : 0;

/** Builds the page that the tests of host and page load. */
function buildPage(): Count {
  const wanted = runs('tests/browser') || runs('tests/electron') || runs('tests/renderer');
  if (!wanted || !existsSync(path.join(root, 'renderer/vite.config.ts'))) return nothing;
  const built = runTool('vite/bin/vite.js', ['build', '--config', 'renderer/vite.config.ts', '--logLevel', 'warn']);
  if (built === 0) return nothing;
  console.error('The page could not be built; that counts as one failure.');
  return { ...nothing, failed: 1 };
}

/** Whether tests of a folder may run: all may, unless the command line names others. */
function runs(folder: string): boolean {
  const named = given.filter((each) => each.startsWith('tests/'));
  return named.length === 0 || named.some((each) => each.startsWith(folder));
}

function runVitest(): Count {
  const folder = mkdtempSync(path.join(tmpdir(), 'loamwright-tests-'));
  const report = path.join(folder, 'report.json');
  const which = long ? '--project=long' : '--project=!long';
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const passedOn = given.filter((each) => each !== '--long');
  const always = ['run', '--config', 'tests/vitest.config.ts'];
  const ending = runTool('vitest/vitest.mjs', [...always, which, ...reporters, ...passedOn]);
  const counted = existsSync(report) ? countReport(Report.parse(JSON.parse(readFileSync(report, 'utf8')))) : nothing;
  rmSync(folder, { recursive: true });
  return countEnding(counted, ending);
}

function runTool(tool: string, args: readonly string[]): number {
  const ran = spawnSync(process.execPath, [path.join(root, 'node_modules', tool), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  return ran.status ?? 1;
}
