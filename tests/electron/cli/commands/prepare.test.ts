import { describe, expect, test } from 'vitest';
import { prepareCommand } from '#electron/cli/commands/prepare.ts';
import { answerOf, tableOf } from '#tests/electron/cli/run-command.ts';
import { useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book } = useDemoBook('2026-11-25');
const wanted = ['--sizes', 'T05', '--handover', '2027-04-28', '--on', '2026-11-25'];
const prepare = (...argv: readonly string[]) => answerOf(prepareCommand, '--book', book(), ...argv);

describe('prepare', () => {
  test('T05 Full for 28 April 2027 as JSON', async () => {
    expect(await prepare(...wanted)).toMatchObject({
      build: '2027-04-07',
      handover: '2027-04-28',
      wanted: '2027-04-28',
      late: 0,
      because: 'plant quarantine',
      steps: [
        { step: 'tank', date: '2027-03-30', orderBy: '2027-03-16' },
        { step: 'panel', date: '2027-03-31', orderBy: null },
        { step: 'plants', date: '2027-03-04', orderBy: '2027-02-26' },
        { step: 'springtails', date: '2027-03-10', orderBy: null },
        { step: 'media', date: '2027-04-05', orderBy: '2027-03-31' },
        { step: 'panes', date: '2027-04-06', orderBy: '2027-03-29' },
        { step: 'lamps', date: '2027-04-06', orderBy: '2027-04-02' },
        { step: 'leaves', date: '2027-04-06', orderBy: null },
        { step: 'build', date: '2027-04-07', orderBy: null },
        { step: 'hardscape', date: '2027-03-30', orderBy: '2027-03-23' },
      ],
      care: [
        { act: 'call', date: '2027-05-05' },
        { act: 'visit', date: '2027-05-26' },
        { act: 'quarterly visit', date: '2027-07-28' },
        { act: 'quarterly visit', date: '2027-10-27' },
        { act: 'quarterly visit', date: '2028-01-26' },
        { act: 'yearly visit', date: '2028-04-27' },
      ],
      cautions: expect.arrayContaining([
        expect.objectContaining({
          id: 'foamAndSealant',
          decides: 'Maker of the product; occupational doctor if wheezing',
        }),
      ]) as object[],
    });
  });

  test('a late deposit moves the handover, and the table says so first', async () => {
    const late = [...wanted, '--deposit', '2027-03-08'];
    expect(await prepare(...late)).toMatchObject({ build: '2027-04-15', handover: '2027-05-06', late: 8 });
    const table = await tableOf(prepareCommand, '--book', book(), ...late);
    const says = table.split('\n\n').find((part) => part.startsWith('8 days late'));
    expect(says?.split('\n')).toEqual([
      '8 days late because of plant quarantine: the handover moves from Wednesday 28 April to Thursday 6 May.',
      'Order plants by Wednesday 10 March or the tank opens later still.',
    ]);
  });

  test('a deposit after the handover wanted: 92 days late, and a handover on a Saturday is asked about', async () => {
    // Tue 1 Jun + 4 working days is Mon 7 Jun; Tue 8 Jun + 30 d is Thu 8 Jul, + 21 d Thu 29 Jul.
    expect(await prepare(...wanted, '--deposit', '2027-06-01')).toMatchObject({
      build: '2027-07-08',
      handover: '2027-07-29',
      late: 92,
    });
    const saturday = ['--sizes', 'T05', '--handover', '2027-05-01', '--on', '2026-11-25'];
    expect(await prepare(...saturday)).toMatchObject({ build: '2027-04-09', handover: '2027-05-01', late: 0 });
    expect(await tableOf(prepareCommand, '--book', book(), ...saturday)).toContain(
      'Saturday 1 May, the handover, is a closed day: who hands over?',
    );
  });

  test('values set on the command line count: no settle-in builds on the day of the handover', async () => {
    expect(await prepare(...wanted, '--set', 'settle_in=0')).toMatchObject({ build: '2027-04-28' });
  });

  test('a job without a handover gets the earliest', async () => {
    expect(await prepare('--job', 'J01', '--on', '2027-03-08')).toMatchObject({
      build: '2027-04-15',
      handover: '2027-05-06',
      wanted: null,
      late: 0,
    });
  });

  test.each([
    [['--sizes', 'T05', '--handover', '28 April'], 1, '--handover 28 April: write the day as 2026-11-25.'],
    [['--sizes', 'T05', '--handover', '2027-02-30'], 1, '--handover 2027-02-30: there is no such day.'],
    [['--sizes', 'T05', '--handovr', '2027-04-28'], 2, 'Unknown option --handovr. Did you mean --handover?'],
    [['--sizes', 'T05', '--set', 'settle_in=-3'], 1, 'settle_in of -3 days: a wait cannot be below zero.'],
    [
      ['--sizes', 'T05', '--on', '9999-12-01'],
      1,
      'The dates run off the calendar: look at the closed days and at the handover.',
    ],
    [['--sizes', 'T05', '--set', 'settle_in='], 1, 'T05, settle_in: Needs a figure: settle_in.'],
  ])('%j ends with %d and says why', async (argv, code, says) => {
    expect(await prepare(...argv)).toEqual({ code, says: [says] });
  });
});
