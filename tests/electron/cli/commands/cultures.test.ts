import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { culturesCommand } from '#electron/cli/commands/cultures.ts';
import { answerOf, tableOf } from '#tests/electron/cli/run-command.ts';
import { useDemoBook } from '#tests/electron/cli/run-cli.ts';

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
      flyStarts: 4,
      flyTubs: 20,
    });
  });

  test('another kind, and a slower growth set on the command line', async () => {
    expect(await cultures('--builds', season(), '--kind', 'C2')).toMatchObject({ tubs: 2, founders: 11 });
    expect(await cultures('--builds', season(), '--set', 'springtail_rate=5')).toMatchObject({
      demands: [{ animals: 3032 }, { animals: 2250 }, { animals: 2724 }],
      tubs: 3,
    });
  });

  test('a job asks for its animals on the day of its build', async () => {
    expect(await cultures('--jobs', 'J01')).toMatchObject({
      demands: [{ date: '2027-06-07', animals: 3506 }],
      tubs: 2,
    });
  });

  test('flies alone, of the large kind: 1,400 a week are 5 starts and 33 tubs', async () => {
    expect(await cultures('--flies', '1400', '--kind', 'C6')).toEqual({
      demands: [],
      tubs: 0,
      spare: 0,
      startBy: null,
      founders: 50,
      flyStarts: 5,
      flyTubs: 33,
    });
  });

  test('people are told what can no longer be ready', async () => {
    const table = await tableOf(culturesCommand, '--book', book(), '--on', '2027-06-02', '--builds', season());
    expect(table).toContain('tubs 2, spare 1, start by 2027-05-31, 1250 animals to a tub');
    expect(table).toContain('White springtail for Monday 28 June: a tub started today is ready on Wednesday 30 June');
  });

  test('no build and no flies: it is said that nothing is asked for', async () => {
    expect(await tableOf(culturesCommand, '--book', book(), '--builds', builds('none.csv'))).toBe(
      'No build asks for White springtail, and no flies are wanted.',
    );
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
