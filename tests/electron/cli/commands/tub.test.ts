import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { lw, lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book, folder } = useDemoBook('2026-11-30');
const tub = (...argv: readonly string[]) => lwJson('tub', ...argv, '--book', book());
const refused = async (...argv: readonly string[]) => {
  const { code, err } = await lw('tub', ...argv, '--book', book());
  return [code, err.trim()];
};
const near = (figure: number) => expect.closeTo(figure, 1) as number;

describe('tub', () => {
  test('a tub of 1,250 since October, floated on 30 November, has 10,609.2 a fortnight later', async () => {
    expect(await tub('start', 'C1', '--on', '2026-10-01')).toMatchObject([
      { tub: 'K1', kind: 'C1', way: 'split', founders: 1250, animals: 1250, mayTake: 0, is: 'growing' },
    ]);
    expect(await tub('list', '--on', '2026-11-30')).toMatchObject([{ animals: near(13_594.5), mayTake: near(6797.2) }]);
    expect(await tub('harvest', 'K1', '--on', '2026-11-30')).toMatchObject([{ animals: near(6797.2), mayTake: 0 }]);
    expect(await tub('list', '--on', '2026-12-13')).toMatchObject([{ mayTake: 0, nextOn: '2026-12-14' }]);
    expect(await tub('list', '--on', '2026-12-14')).toMatchObject([{ animals: near(10_609.2), mayTake: near(5304.6) }]);
  });

  test('the jobs of one day share what is floated, and what is over is gone from the tub', async () => {
    await tub('harvest', 'K1', '2000', '--job', 'J01', '--on', '2026-12-14');
    const after = await tub('harvest', 'K1', '3000', '--job', 'J01', '--on', '2026-12-14');
    expect(after).toMatchObject([{ animals: near(5304.6) }]);
    expect(await refused('harvest', 'K1', '400', '--on', '2026-12-14')).toEqual([
      1,
      'Tub K1 may give 304 on 14 December 2026, not 400: the rest is its breeding stock.',
    ]);
  });

  test('isopods are picked as they are asked for, up to a fifth within thirty days', async () => {
    await tub('start', 'C3', '--founders', '100', '--on', '2026-06-01', '--degC', '23');
    await tub('count', 'K2', '600', '--on', '2026-12-01');
    await tub('harvest', 'K2', '50', '--job', 'J01', '--on', '2026-12-01');
    expect(await refused('harvest', 'K2', '71', '--on', '2026-12-01')).toEqual([
      1,
      'Tub K2 may give 70 on 1 December 2026, not 71: the rest is its breeding stock.',
    ]);
    await tub('harvest', 'K2', '70', '--sold', '--on', '2026-12-01');
    const listed = await tub('list', '--on', '2026-12-01');
    expect(listed).toMatchObject([{ tub: 'K1' }, { tub: 'K2', animals: near(480), mayTake: near(0), degC: 23 }]);
  });

  test('a split is taken from the tub that it comes from', async () => {
    const split = await tub('start', 'C1', '--from', 'K1', '--founders', '1250', '--on', '2026-12-20');
    expect(split).toMatchObject([{ tub: 'K1' }, { tub: 'K3', founders: 1250 }, { tub: 'K2' }]);
    expect(await refused('harvest', 'K1', '10', '--on', '2026-12-16')).toEqual([
      1,
      'Tub K1 was harvested or counted after 16 December 2026: take that back first.',
    ]);
  });

  test('what is taken for a job is no longer asked for by it', async () => {
    const file = path.join(folder(), 'none.csv');
    writeFileSync(file, 'date,tank,count\n');
    const board = await lwJson('cultures', '--jobs', 'J01', '--on', '2026-12-20', '--book', book());
    expect(board).toMatchObject({ demands: [], tubs: 0, standing: [{ tub: 'K1' }, { tub: 'K3' }] });
  });

  test('one that has ended stands no more', async () => {
    await tub('end', 'K2', '--on', '2026-12-24');
    expect(await tub('list', '--on', '2026-12-24')).toMatchObject([{ tub: 'K1' }, { tub: 'K3' }]);
    expect(await refused('count', 'K2', '500', '--on', '2026-12-24')).toEqual([
      1,
      'Tub K2 does not stand on 24 December 2026.',
    ]);
  });

  test('outside what its kind stands a tub has to be counted', async () => {
    await tub('start', 'C1', '--degC', '16', '--on', '2026-10-01');
    expect(await refused('harvest', 'K4', '--on', '2026-12-24')).toEqual([
      1,
      'How many animals tub K4 has is not known at its temperature: count it.',
    ]);
    await tub('count', 'K4', '4000', '--on', '2026-12-24');
    const [counted] = (await tub('list', '--on', '2026-12-24')) as readonly unknown[];
    expect(counted).toMatchObject({ tub: 'K1' });
    await tub('harvest', 'K4', '500', '--on', '2026-12-24');
  });

  test.each([
    [['start'], 2, 'Say the kind of culture, as C1.'],
    [['start', 'C1', 'C2'], 2, 'What is C2 for?'],
    [['start', 'C9'], 1, 'There is no culture kind C9. Did you mean C1?'],
    [['count', 'K1'], 2, 'Say the count, as 4000.'],
    [['harvest', 'K9'], 1, 'There is no tub K9. Did you mean K1?'],
    [['start', 'C1', '--degC', 'warm'], 1, '--degC warm: give a temperature, as "22 degC".'],
    [['list', '--on', 'soon'], 1, '--on soon: write the day as 2026-11-25.'],
  ])('%j ends with %d and says why', async (argv, code, says) => {
    expect(await refused(...argv)).toEqual([code, says]);
  });

  test('people read it as a table', async () => {
    const { out } = await lw('tub', 'list', '--on', '2026-12-20', '--book', book());
    expect(out).toContain('K1   White springtail');
    expect((await lw('tub', 'list', '--on', '2020-01-01', '--book', book())).out).toBe('No tub stands.\n');
  });
});
