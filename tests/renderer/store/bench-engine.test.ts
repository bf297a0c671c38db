import { expect, test } from 'vitest';
import { loadGraphBench } from '#renderer/store/bench-engine.ts';
import { jobSource } from '#renderer/store/bench-source.ts';
import { workBench, type WorkedBench } from '#renderer/store/worked-bench.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob, written } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { ownClock } from './own-clock.ts';

test('the figures of a bench stay as they are when its graph engine is loaded, and follow edits before and after', async () => {
  const records = libraryJob({
    sizes: [
      { tank: 'T05', count: 1 },
      { tank: 'T07', count: 2 },
    ],
  });
  const source = jobSource();
  const sourceOf = (litter: string) => {
    const next = source(derive(written(records, 'us', { 'T05.litter': litter }), DEMO_DAY), 'J02');
    if (!next) throw new Error('no source');
    return next;
  };
  const clock = ownClock();
  const worked = workBench(sourceOf('20 mm'), ['T05'], clock);
  clock.rest();
  const seen = [figuresOf(worked)];
  worked.take(sourceOf('30 mm'), ['T05']);
  clock.rest();
  seen.push(figuresOf(worked));
  const [whole, before] = [worked.bench(), worked.version.peek()];
  clock.pass(1000);
  await loadGraphBench();
  await Promise.resolve();
  clock.rest();
  expect([worked.bench() === whole, worked.version.peek() > before, worked.isBehind()]).toEqual([false, true, false]);
  expect(figuresOf(worked)).toEqual(seen[1]);
  worked.take(sourceOf('20 mm'), ['T05']);
  clock.rest();
  expect(figuresOf(worked)).toEqual(seen[0]);
  expect(seen[0]).not.toEqual(seen[1]);
  worked.close();
});

function figuresOf(worked: WorkedBench) {
  const { lines, columns } = worked.source();
  return columns.map(({ key }) => [worked.sums(key), lines.map(({ name }) => worked.bench().box(key, name).value)]);
}
