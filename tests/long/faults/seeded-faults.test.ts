import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, test } from 'vitest';
import { CopiedSources } from './copied-sources.ts';
import { drawFaults, type FaultInFile } from './draw-faults.ts';
import { relatedTests } from './related-tests.ts';

/*
 * Inserts small faults in a copy of the sources, one at a time, and runs the tests that import the file: a fault they
 * do not see would stay unnoticed. The same seed draws the same faults of the same sources.
 * APP_TEST_FAULTS: how many of each layer (12). APP_TEST_FAULT_SEED: which (1). APP_TEST_FAULT_LAYER: one layer only.
 */

const root = fileURLToPath(new URL('../../..', import.meta.url));
const sample = Number(process.env['APP_TEST_FAULTS'] ?? 12);
const seed = Number(process.env['APP_TEST_FAULT_SEED'] ?? 1);
/** No fault is started after this time; those tried by then are judged. */
const longestMs = (sample / 12) * 7 * 60_000;
/** Time for making the copy, ending the last fault and running its killers without a fault, also on a busy machine. */
const aroundMs = 15 * 60_000;
/** The nearest tests see most faults; the others run only if those see nothing. */
const nearest = 6;
const most = 24;
/** What those do not see of the page is asked of the whole page: what is read in every place and on every paper, and jobs from end to end. */
const wholePage = [
  'tests/renderer/places/shown-rows.test.ts',
  'tests/renderer/places/shown-papers.test.ts',
  'tests/browser/main-job.test.ts',
  'tests/browser/first-minute.test.ts',
];

const floors: readonly (readonly [layer: string, floor: number])[] = [
  ['shared-calc', 0.95],
  ['electron', 0.9],
  ['renderer', 0.85],
];
const tested = floors.filter(([layer]) => (process.env['APP_TEST_FAULT_LAYER'] ?? layer) === layer);

describe.concurrent('small faults in the code', () => {
  test.for(tested)(
    'in %s are seen by a test',
    { timeout: longestMs + aroundMs },
    async ([layer, floor], { expect }) => {
      const { tried, unseen, killers, copy } = await tryFaults(layer);
      using _ = copy;
      const seen = tried - unseen.length;
      // The list of unseen faults is the purpose of this test, whether the floor holds or not.
      process.stdout.write(
        [`${layer}: ${seen} of ${tried} faults seen (seed ${seed})`, ...unseen.map(describeFault), ''].join('\n'),
      );
      expect(await copy.testWhole([...killers]), 'these fail without a fault').toEqual({ failed: false, by: [] });
      // Of a small sample the share allows a part of a fault: that counts as one.
      expect(unseen.length).toBeLessThanOrEqual(Math.ceil(tried * (1 - floor)));
    },
  );
});

interface Tried {
  readonly tried: number;
  readonly unseen: readonly FaultInFile[];
  /** Tests that failed under a fault. */
  readonly killers: ReadonlySet<string>;
  readonly copy: CopiedSources;
}

async function tryFaults(layer: string): Promise<Tried> {
  const copy = new CopiedSources(root);
  await copy.declare();
  const testsOf = relatedTests(root);
  const unseen: FaultInFile[] = [];
  const killers = new Set<string>();
  const until = performance.now() + longestMs;
  let tried = 0;
  for (const fault of drawFaults(root, layer, seed)) {
    if (tried === sample || performance.now() > until) break;
    await copy.withFault(fault, async () => {
      if (!(await copy.compiles(layer))) return;
      tried += 1;
      const by =
        (await whoSees(copy, testsOf(fault.file))) ?? (layer === 'renderer' ? await whoSeesOnPage(copy) : null);
      if (by === null) unseen.push(fault);
      for (const each of by ?? []) killers.add(each);
    });
  }
  if (layer === 'renderer') await copy.buildPage();
  return { tried, unseen, killers, copy };
}

/** The tests that fail, or null where none does. */
async function whoSees(copy: CopiedSources, tests: readonly string[]): Promise<readonly string[] | null> {
  for (const batch of [tests.slice(0, nearest), tests.slice(nearest, most)]) {
    if (batch.length === 0) continue;
    const { failed, by } = await copy.test(batch);
    if (failed) return by;
  }
  return null;
}

async function whoSeesOnPage(copy: CopiedSources): Promise<readonly string[] | null> {
  if (!(await copy.buildPage())) return [];
  const { failed, by } = await copy.test(wholePage);
  return failed ? by : null;
}

function describeFault({ file, kind, start, end, instead }: FaultInFile): string {
  const text = readFileSync(path.join(root, file), 'utf8');
  const line = text.slice(0, start).split('\n').length;
  const short = (piece: string): string => piece.replaceAll(/\s+/gu, ' ').slice(0, 90);
  return `  ${file}:${line} ${kind}: ${short(text.slice(start, end))} -> ${short(instead)}`;
}
