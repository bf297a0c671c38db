import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { culturesCommand } from '#electron/cli/commands/cultures.ts';
import { answerOf, tableOf } from '#tests/electron/cli/run-command.ts';
import { lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book, folder } = useDemoBook();
const cultures = (...argv: readonly string[]) =>
  answerOf(culturesCommand, '--book', book(), '--on', '2027-05-01', ...argv);

function builds(name: string, ...rows: readonly string[]): string {
  const file = path.join(folder(), name);
  writeFileSync(file, ['date,tank,count', ...rows, ''].join('\n'));
  return file;
}

const season = () => builds('season.csv', '2027-07-19,T08,1', '2027-06-28,T07,2', '2027-07-05,T03,3');

describe('cultures', () => {
  test('the season of three builds: 2 tubs and a spare, start by 31 May, and flies beside', async () => {
    expect(await cultures('--builds', season(), '--flies', '1400')).toEqual({
      demands: [
        { date: '2027-06-28', animals: 2130 },
        { date: '2027-07-05', animals: 1581 },
        { date: '2027-07-19', animals: 1914 },
      ],
      tubs: 2,
      spare: 1,
      startBy: '2027-05-31',
      founders: 1250,
      way: 'split',
      rate: { value: 7, from: 7, to: 7, unit: '%/d' },
      starts: ['2027-05-31', '2027-06-07'],
      standing: [],
      fewer: null,
      late: [],
      flyStarts: 4,
      flyTubs: 20,
      flyFirst: { tubs: 10, on: '2027-04-17' },
      warnings: [
        {
          says: 'No tub of White springtail stands to split: start a new line, or buy the starter animals.',
          decides: 'Grower',
        },
      ],
      cautions: ['microfauna', 'neverRelease', 'sentLive', 'denseCup', 'feeding'].map(
        (id) => expect.objectContaining({ id }) as object,
      ),
    });
  });

  test('another kind, and a slower growth set on the command line', async () => {
    expect(await cultures('--builds', season(), '--kind', 'C2')).toMatchObject({ tubs: 2, founders: 1000 });
    expect(await cultures('--builds', season(), '--set', 'springtail_rate=5')).toMatchObject({
      demands: [{ animals: 3032 }, { animals: 2250 }, { animals: 2724 }],
      tubs: 3,
    });
  });

  test('a job asks for its animals on the day of its build, which waits from May for the leaves of October', async () => {
    expect(await cultures('--jobs', 'J01')).toMatchObject({
      demands: [{ date: '2027-10-04', animals: 3506 }],
      tubs: 2,
    });
  });

  test('flies alone, of the large kind: 1,400 a week are 5 starts and 33 tubs', async () => {
    expect(await cultures('--flies', '1400', '--kind', 'C6')).toMatchObject({
      demands: [],
      tubs: 0,
      spare: 0,
      startBy: null,
      founders: 50,
      flyStarts: 5,
      flyTubs: 33,
      // 1,400 of 350 x 0.9 x 7 / 21 = 105 a tub and week; 24 days before
      flyFirst: { tubs: 14, on: '2027-04-07' },
    });
  });

  test('people are told what can no longer be ready', async () => {
    const table = await tableOf(culturesCommand, '--book', book(), '--on', '2027-06-02', '--builds', season());
    expect(table).toContain('tubs 2, spare 1, start by 2027-05-31, 1250 animals to a tub');
    expect(table).toContain(
      'White springtail for Monday 28 June: 2,130 short, a tub started today gives that on Wednesday 30 June. Instead: 2 cups, 12.00 cr.',
    );
  });

  test('no build and no flies: it is said that nothing is asked for', async () => {
    const table = await tableOf(culturesCommand, '--book', book(), '--builds', builds('none.csv'));
    expect(table.split('\n').slice(0, 2)).toEqual(['No build asks for White springtail, and no flies are wanted.', '']);
  });

  test('every row that cannot be read is named, and nothing is worked', async () => {
    const file = builds('wrong.csv', '2027-06-31,T07,2', '2027-07-05,T3,3', '2027-07-19,T08,0');
    expect(await cultures('--builds', file)).toEqual({
      code: 1,
      says: [
        `${file}, row 2: "2027-06-31" is not a day; write it as 2027-06-28.`,
        `${file}, row 3: No tank called T3. Did you mean T03?`,
        `${file}, row 4: Count "0" is not 1 to 999.`,
      ],
    });
  });

  test.each([
    [[], 2, 'Say which builds: --builds FILE.csv, or --jobs J01,J02.'],
    [['--jobs', 'J01', '--way', 'nwe'], 2, '--way nwe: choose split or new. Did you mean new?'],
    [['--jobs', 'J01', '--from', '2027-09-06'], 2, '--from is the first day of flies: give --flies.'],
    [['--jobs', 'J01', '--degC', '5 kg'], 1, '--degC 5 kg: give a temperature, as "22 degC".'],
    [
      ['--jobs', 'J01', '--degC', '15 degC'],
      1,
      'White springtail at 15 degC: growth is known from 18 to 24 degC alone; count the tub.',
    ],
    [['--flies', 'many'], 2, '--flies many: give whole flies a week, as 1400.'],
    [['--builds', 'no-such.csv'], 1, 'Cannot read no-such.csv.'],
    [['--jobs', 'J01', '--kind', 'C9'], 1, 'No culture kind called C9. Did you mean C1?'],
    [
      ['--jobs', 'J01', '--kind', 'C5'],
      1,
      'Small flightless fruit fly is kept by the week, not for builds: give --flies.',
    ],
  ])('%j ends with %d and says why', async (argv, code, says) => {
    expect(await cultures(...argv)).toEqual({ code, says: [says] });
  });
});

/** A rule's time, which `work` tells in minutes. */
async function daysOf(rule: string): Promise<number> {
  const { value } = z.object({ value: z.number() }).parse(await lwJson('work', rule));
  return value / (24 * 60);
}

describe('worked checks of cultures', () => {
  const on = (day: string, ...argv: readonly string[]) =>
    answerOf(culturesCommand, '--book', book(), '--on', day, ...argv);
  const tubs = (...rows: readonly string[]) => {
    const file = path.join(folder(), 'tubs.csv');
    writeFileSync(file, ['kind,started,founders,degC', ...rows, ''].join('\n'));
    return file;
  };
  const single = (name: string, ...dates: readonly string[]) => builds(name, ...dates.map((date) => `${date},T07,1`));

  test('the season of white springtails: 2 tubs and a spare, started by 31 May and 7 June', async () => {
    expect(await on('2026-11-30', '--builds', season())).toMatchObject({
      demands: [{ animals: 2130 }, { animals: 1581 }, { animals: 1914 }],
      tubs: 2,
      spare: 1,
      starts: ['2027-05-31', '2027-06-07'],
      founders: 1250,
    });
  });

  test('of the pink kind as new lines of 11: by 9 and 22 April', async () => {
    expect(await on('2026-11-30', '--builds', season(), '--kind', 'C2', '--way', 'new')).toMatchObject({
      tubs: 2,
      spare: 1,
      starts: ['2027-04-09', '2027-04-22'],
      founders: 11,
    });
  });

  test('five builds of ten isopods each are picked from one tub', async () => {
    const file = single('picked.csv', '2027-09-01', '2027-09-02', '2027-09-03', '2027-09-06', '2027-09-07');
    expect(await on('2026-11-30', '--builds', file, '--kind', 'C3')).toMatchObject({
      tubs: 1,
      spare: 1,
      startBy: '2027-06-03',
    });
  });

  test('200 isopods on one day: two tubs by 3 June, or one by 20 April', async () => {
    const file = builds('dwarf.csv', '2027-09-01,T07,20');
    expect(await on('2026-11-30', '--builds', file, '--kind', 'C3')).toMatchObject({
      demands: [{ animals: 200 }],
      tubs: 2,
      spare: 1,
      startBy: '2027-06-03',
      fewer: { tubs: 1, startBy: '2027-04-20' },
    });
  });

  test('400 of the powdery kind: eight and two spare by 18 June, or seven by 15 June', async () => {
    const file = builds('powdery.csv', '2027-09-01,T07,40');
    expect(await on('2026-11-30', '--builds', file, '--kind', 'C4')).toMatchObject({
      demands: [{ animals: 400 }],
      tubs: 8,
      spare: 2,
      startBy: '2027-06-18',
      fewer: { tubs: 7, startBy: '2027-06-15' },
    });
  });

  test('a tub of 1,250 since October has 13,594.5 on 30 November, may give half, and saves one of two new ones', async () => {
    const standing = tubs('C1,2026-10-01,1250,');
    expect(await on('2026-11-30', '--builds', season(), '--tubs', standing)).toMatchObject({
      standing: [
        { tub: 'row 2', animals: expect.closeTo(13_594.5, 1) as number, mayTake: expect.closeTo(6797.2, 1) as number },
      ],
      tubs: 1,
      startBy: '2027-06-07',
    });
  });

  test('19 and 24 degC: 6.094 and 8.618 % a day, each with its range', async () => {
    const rate = async (degC: string) => ({
      ...((await on('2026-11-30', '--builds', season(), '--degC', degC)) as object),
    });
    expect(await rate('19 degC')).toMatchObject({
      rate: {
        value: expect.closeTo(6.094, 3) as number,
        from: expect.closeTo(5.619, 3) as number,
        to: expect.closeTo(6.455, 3) as number,
      },
    });
    expect(await rate('24 degC')).toMatchObject({ rate: { value: expect.closeTo(8.618, 3) as number } });
  });

  test('a T07 of today with 500 springtails to give: a cup, or seed with them and wait 12 d more', async () => {
    const today = builds('today.csv', '2027-06-28,T07,1');
    // 149 animals grow to 1,001 in 28 days: half of them is 500, of 1,065 asked.
    const found = await on('2027-06-28', '--builds', today, '--tubs', tubs('C1,2027-05-31,149,'));
    expect(found).toMatchObject({ late: [{ date: '2027-06-28', short: 565, cups: 1, coins: '6.00', wait: 12 }] });
    // 500 on 0.4005 m2 reach 8,000 a m2 after 32.91 days, 12 more than the 21 of settling in.
    expect(await daysOf('days_to_count(500 / 0.4005, 8000, 20000, 7 %/d)')).toBeCloseTo(32.91, 2);
  });

  test.each([
    ['6.094', 32.1],
    ['7', 28],
    ['8.618', 22.7],
  ])('a split growing by %s in a hundred a day comes to 6,000 in %d days', async (rate, days) => {
    expect(await daysOf(`days_to_count(1250, 6000, 16000, ${rate} %/d)`)).toBeCloseTo(days, 1);
  });

  test('1,400 small flies a week from 6 September: 10 tubs on 23 August, then 4 a week, 20 on the shelf', async () => {
    expect(await on('2027-08-01', '--flies', '1400', '--from', '2027-09-06')).toMatchObject({
      flyFirst: { tubs: 10, on: '2027-08-23' },
      flyStarts: 4,
      flyTubs: 20,
    });
  });

  test('every row of tubs that cannot be read is named', async () => {
    const file = tubs('C9,2027-05-31,100,', 'C1,soon,100,', 'C1,2027-05-31,few,', 'C1,2027-05-31,100,warm');
    expect(await on('2027-06-28', '--builds', season(), '--tubs', file)).toEqual({
      code: 1,
      says: [
        `${file}, row 2: No culture kind called C9. Did you mean C1?`,
        `${file}, row 3: "soon" is not a day; write it as 2027-06-28.`,
        `${file}, row 4: Founders "few" is not a whole count, as 1250.`,
        `${file}, row 5: "warm" is not a temperature in degC, as 21.`,
      ],
    });
  });
});

describe('flies that the animals of jobs eat', () => {
  test('four frogs at 20 a day: 560 a week, as with --flies 560', async () => {
    const frogs = { job: 'J01', column: 'T07', animalKind: 'A1', animals: 4 };
    await lwJson('act', 'setAnimals', JSON.stringify(frogs), '--book', book());
    const eaten = await cultures('--jobs', 'J01', '--kind', 'C5');

    expect(eaten).toEqual(await cultures('--flies', '560', '--kind', 'C5'));
    await lwJson('act', 'setAnimals', JSON.stringify({ ...frogs, animals: null }), '--book', book());
    expect(await cultures('--jobs', 'J01', '--kind', 'C5')).toEqual({
      code: 1,
      says: ['How many the animals of T07 eat is not known yet: give --flies.'],
    });
  });
});
