import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { lw, useDemoBook } from './run-cli.ts';

const Answer = z.object({
  on: z.string(),
  items: z.array(z.looseObject({ day: z.string(), what: z.string(), late: z.number(), decides: z.boolean() })),
});

/** Check D8: a T05 paid on 22 February for 28 April, its plants in on 2 March and clear on 1 April. */
describe('today with plants in quarantine', () => {
  const { book } = useDemoBook('2027-02-22');
  const ask = async (...argv: readonly string[]) => (await lw(...argv, '--book', book())).out;
  const todo = async (...argv: readonly string[]) => {
    const { items } = Answer.parse(JSON.parse(await ask('today', '--json', ...argv)));
    return items.map(({ day, what, late }) => [day, what, late]);
  };

  beforeAll(async () => {
    await ask('job', 'new', '--title', 'Reading room', '--sizes', 'T05', '--handover', '2027-04-28');
    await ask('job', 'state', 'J02', 'accepted');
    await ask('job', 'deposit', 'J02', '645.00', '--on', '2027-02-22');
    for (const plants of ['PG', 'PM', 'PF', 'PC', 'PE']) {
      await ask('store', 'in', plants, '4 each', '--on', '2027-03-02', '--until', '2027-04-01');
      await ask('store', 'keep', plants, '4 each', '--job', 'J02', '--on', '2027-03-02');
    }
  });

  test('on 17 March: the plants should have been looked over on the 9th, and the springtails are started', async () => {
    expect(await todo('--on', '2027-03-17')).toEqual([
      ['2027-03-09', 'look over plants', 8],
      ['2027-03-17', 'start springtails', 0],
    ]);
  });

  test('each open step stands on its last day, and the springtails decide', async () => {
    const { items } = Answer.parse(JSON.parse(await ask('today', '--on', '2027-03-17', '--days', '27', '--json')));
    expect(items.map(({ day, what, decides }) => `${day} ${what}${decides ? ', decides' : ''}`)).toEqual([
      '2027-03-09 look over plants',
      '2027-03-17 start springtails, decides',
      '2027-03-23 order the tank',
      '2027-03-30 order wood, cork and sealant',
      '2027-04-01 clear plants',
      '2027-04-05 order the panes',
      '2027-04-07 order media',
      '2027-04-07 glue the background',
      '2027-04-09 order lamps and misting',
      '2027-04-13 treat the leaves',
    ]);
  });

  test('what is written as done takes its item away, and no other', async () => {
    await ask('did', '--job', 'J02', '--step', 'looks', '--on', '2027-03-17');
    expect(await todo('--on', '2027-03-17')).toEqual([['2027-03-17', 'start springtails', 0]]);
    expect(await todo('--on', '2027-03-23')).toContainEqual(['2027-03-23', 'look over plants', 0]);
  });

  test('the board has the job on the day of its first item', async () => {
    expect(await ask('jobs', '--on', '2027-03-17')).toContain('start springtails, by 2027-03-17');
  });
});
