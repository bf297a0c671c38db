import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { Run } from './answers.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

const day = '2026-11-30';

const Lot = z.looseObject({ lot: z.string(), amount: z.number(), each: z.string().nullable() });
const Store = z.object({
  goods: z.array(
    z.looseObject({
      of: z.string(),
      unit: z.string(),
      onHand: z.number(),
      free: z.number(),
      quarantined: z.number(),
      kept: z.record(z.string(), z.number()),
      onOrder: z.number(),
      coming: z.number(),
      least: z.number().nullable(),
      lots: z.array(Lot),
    }),
  ),
});

interface ClayBook {
  readonly handover?: string;
  /** The best-before day of the last 13 L. */
  readonly best?: string;
}

/** J02 is a T07 and J03 a T08; clay lies there as 5 L, 7 L for J02, 9 L for J03 and 13 L. */
function useClay({ handover, best }: ClayBook) {
  const { book } = useDemoBook(day);
  const on = ['--on', day] as const;
  const say = async (...argv: readonly string[]) => {
    const { code, err } = await lw(...argv, '--book', book());
    if (code !== 0) throw new Error(err);
  };
  const json = (...argv: readonly string[]) => lwJson(...argv, ...on, '--book', book());
  const fill = async () => {
    const days = handover === undefined ? [] : ['--handover', handover];
    for (const tank of ['T07', 'T08'])
      await say('job', 'new', '--title', tank, '--sizes', tank, '--set', 'soil_rise=0 mm', ...days);
    await say('store', 'count', 'M01', '0 L', ...on);
    for (const amount of ['5 L', '7 L', '9 L']) await say('store', 'in', 'M01', amount, ...on);
    await say('store', 'in', 'M01', '13 L', ...(best === undefined ? [] : ['--best', best]), ...on);
    await say('store', 'keep', 'M01', '7 L', '--job', 'J02', ...on);
    await say('store', 'keep', 'M01', '9 L', '--job', 'J03', ...on);
  };
  const run = async (jobs: string, material = 'M01') =>
    Run.parse(await json('run', '--jobs', jobs, '--materials', material));
  const sums = async (jobs: string) => {
    const { alone, landedAlone, together, landedTogether } = await run(jobs);
    return [alone, landedAlone, together, landedTogether];
  };
  return { say, json, fill, run, sums, on };
}

describe('a run over jobs and the store', () => {
  const clay = useClay({});

  test('each job has its own first, and in which order they are listed decides', async () => {
    await clay.fill();
    expect(await clay.sums('J03,J02')).toEqual(['19.60', '34.60', '19.60', '27.10']);
    expect(await clay.sums('J02,J03')).toEqual(['19.60', '27.10', '19.60', '27.10']);
    const [need] = (await clay.run('J02,J03')).materials;
    expect(need).toMatchObject({ onHand: 34, kept: { J02: 7, J03: 9 }, keptOver: {}, coming: 0, forStore: 0 });
  });

  test('under its least the run fills the store up: 53 L as 45 and 10, for 41.30', async () => {
    await clay.say('store', 'count', 'M01', '0 L', ...clay.on);
    await clay.say('store', 'in', 'M01', '7 L', ...clay.on);
    await clay.say('store', 'least', 'M01', '20 L', '60 L');
    const { materials, together } = await clay.run('');
    const [need] = materials;
    expect([together, need?.forStore, need?.packs.map(({ size, count }) => [size, count])]).toEqual([
      '41.30',
      53,
      [
        [45, 1],
        [10, 1],
      ],
    ]);
  });
});

describe('the day of use', () => {
  const clay = useClay({ handover: '2027-04-28', best: '2026-12-01' });

  test('what is past its best by then does not count: 39.20 alone, 29.40 together, 54.20 and 36.90 landed', async () => {
    await clay.fill();
    expect(await clay.sums('J03,J02')).toEqual(['39.20', '54.20', '29.40', '36.90']);
  });

  test('plants that are clear by the build on 7 April are not bought, on 24 March they are', async () => {
    await clay.say('store', 'in', 'P04', '6', '--until', '2027-03-31', ...clay.on);
    await clay.say('store', 'keep', 'P04', '6', '--job', 'J02', ...clay.on);
    const bought = async () => (await clay.run('J02', 'PG')).materials[0]?.packs.map(({ count }) => count);
    const late = await bought();
    await clay.say('act', 'writeJob', '{"job":"J02","fields":{"handover":"2027-04-14"}}');
    expect([late, await bought()]).toEqual([[], [6]]);
  });

  test('the store says what a lot cost, and what of it is for whom', async () => {
    await clay.say('store', 'in', 'M02', '45 L', '--paid', '32.00', ...clay.on);
    const { goods } = Store.parse(await clay.json('store', 'M02'));
    expect(goods).toMatchObject([
      { of: 'M02', unit: 'L', onHand: 45, free: 45, kept: {}, onOrder: 0, lots: [{ lot: 'K-M02', each: '0.7111' }] },
    ]);
    const { goods: plants } = Store.parse(await clay.json('store', 'PG', '--use', '2027-03-31'));
    expect(plants).toMatchObject([{ of: 'PG', onHand: 6, free: 0, quarantined: 6, kept: { J02: 6 } }]);
  });
});
