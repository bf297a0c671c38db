import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { prepareCommand } from '#electron/cli/commands/prepare.ts';
import { temporaryFolder } from '#tests/electron/book/book-at-hand.ts';
import { answerOf } from '#tests/electron/cli/run-command.ts';
import { useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book } = useDemoBook();

function factsFile(rows: readonly string[]): string {
  const file = join(temporaryFolder(), 'facts.csv');
  writeFileSync(file, ['step,what,date', ...rows].join('\n'));
  return file;
}

const prepare = (...argv: readonly string[]) => answerOf(prepareCommand, '--book', book(), '--sizes', 'T05', ...argv);

interface Plan {
  readonly build: string;
  readonly handover: string;
  readonly late: number;
  readonly because: string;
  readonly steps: readonly { readonly step: string; readonly [key: string]: unknown }[];
}

const forecast = ({ build, handover, late, because }: Plan) => [build, handover, late, because];
const stepOf = ({ steps }: Plan, name: string) => steps.find(({ step }) => step === name);

const ofSpring = ['--handover', '2027-04-28', '--deposit', '2027-02-22'];
const plants = ['plants,in,2027-03-02', 'plants,cleared,2027-04-01'];
const others = ['media', 'panes', 'lamps', 'hardscape'].map((step) => `${step},in,2027-03-30`);
const tubAndTank = ['tank,in,2027-03-30', 'springtails,started,2027-03-10'];

async function planned(on: string, facts: readonly string[] = [], wish: readonly string[] = ofSpring): Promise<Plan> {
  const given = facts.length === 0 ? [] : ['--facts', factsFile(facts)];
  return (await prepare(...wish, '--on', on, ...given)) as Plan;
}

describe('prepare --facts', () => {
  test('D1: nothing ordered three months after the deposit is ordered from today, and 50 days late', async () => {
    const plan = await planned('2027-04-20', [], ['--handover', '2027-04-28', '--deposit', '2027-01-04']);
    expect(forecast(plan)).toEqual(['2027-05-27', '2027-06-17', 50, 'plant quarantine']);
  });

  test.each(['2027-07-18', '2027-07-19'])('D2: a deposit on Sunday is one on Monday: %s', async (day) => {
    const wish = ['--handover', '2027-08-28', '--deposit', day, '--set', 'settle_in=13 d'];
    const plan = await planned(day, [], wish);
    expect(forecast(plan).slice(0, 3)).toEqual(['2027-08-26', '2027-09-08', 11]);
    const days = plan.steps.flatMap(({ date, orderBy }) => [date, orderBy ?? date]);
    expect(days.filter((each) => String(each) < '2027-07-19')).toEqual([]);
  });

  test('D3, D8: plants that are in do not wait for an order; each open step has its last day', async () => {
    const plan = await planned('2027-03-17', plants);
    expect(forecast(plan)).toEqual(['2027-04-14', '2027-05-05', 7, 'springtail culture']);
    expect(plan.steps).toEqual([
      { step: 'tank', state: 'open', orderBy: '2027-03-23', date: '2027-04-06' },
      { step: 'panel', state: 'open', orderBy: null, date: '2027-04-07' },
      { step: 'plants', state: 'in', orderBy: null, date: '2027-03-02', on: '2027-03-02', cleared: '2027-04-01' },
      { step: 'springtails', state: 'open', orderBy: null, date: '2027-03-17' },
      { step: 'media', state: 'open', orderBy: '2027-04-07', date: '2027-04-12' },
      { step: 'panes', state: 'open', orderBy: '2027-04-05', date: '2027-04-13' },
      { step: 'lamps', state: 'open', orderBy: '2027-04-09', date: '2027-04-13' },
      { step: 'leaves', state: 'open', orderBy: null, date: '2027-04-13' },
      { step: 'build', state: 'open', orderBy: null, date: '2027-04-14' },
      { step: 'hardscape', state: 'open', orderBy: '2027-03-30', date: '2027-04-06' },
    ]);
  });

  test('D4: a background that is not glued has no past, though its tank came a week ago', async () => {
    const plan = await planned('2027-04-06', [...plants, ...others, ...tubAndTank]);
    expect(forecast(plan)).toEqual(['2027-04-13', '2027-05-04', 6, 'tank delivery and background cure']);
    expect(stepOf(plan, 'panel')).toMatchObject({ state: 'open', date: '2027-04-06' });
  });

  test.each([[[]], [['leaves,done,2027-04-05']], [['leaves,in,2027-03-30']]])(
    'D5: glued in time, all is in time; the cure decides, whether the leaves are treated or not: %j',
    async (leaves) => {
      const facts = [...plants, ...others, ...tubAndTank, 'panel,done,2027-03-31', ...leaves];
      const plan = await planned('2027-04-06', facts);
      expect(forecast(plan)).toEqual(['2027-04-07', '2027-04-28', 0, 'tank delivery and background cure']);
      expect(stepOf(plan, 'panel')).toMatchObject({ state: 'done', on: '2027-03-31' });
    },
  );

  test('D6: panes that were due four weeks ago are expected today at the earliest, and the step says so', async () => {
    const all = [...plants, ...tubAndTank, ...others.filter((each) => !each.startsWith('panes'))];
    const plan = await planned('2027-04-09', [...all, 'panel,done,2027-03-31', 'panes,due,2027-03-12']);
    expect(forecast(plan)).toEqual(['2027-04-12', '2027-05-03', 5, 'cut panes']);
    expect(stepOf(plan, 'panes')).toEqual({
      step: 'panes',
      state: 'ordered',
      date: '2027-04-09',
      orderBy: null,
      due: '2027-03-12',
      says: 'overdue: ask',
    });
  });

  test('what is built and handed over stands on its own days', async () => {
    const facts = ['build,done,2027-04-09', 'watch,done,2027-04-28', 'handover,done,2027-04-30'];
    expect(forecast(await planned('2027-06-01', facts)).slice(0, 3)).toEqual(['2027-04-09', '2027-04-30', 2]);
  });

  test('a row that no step can be is refused, every one by its number', async () => {
    const file = factsFile(['pannel,done,2027-03-31', 'panel,due,2027-03-31', 'plants,in,2 March']);
    expect(await prepare('--facts', file)).toEqual({
      code: 1,
      says: [
        `${file}, row 2: No step called pannel. Did you mean panel?`,
        `${file}, row 3: panel can be done; "due" is none of them.`,
        `${file}, row 4: "2 March" is not a day; write it as 2027-06-28.`,
      ],
    });
  });
});
