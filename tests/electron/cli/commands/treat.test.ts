import { describe, expect, test } from 'vitest';
import { treatCommand } from '#electron/cli/commands/treat.ts';
import { answerOf, tableOf } from '#tests/electron/cli/run-command.ts';
import { useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book } = useDemoBook();
const treat = (...argv: readonly string[]) => answerOf(treatCommand, '--book', book(), ...argv);
const leaves = ['--leaves', '43.51 L'];

describe('treat', () => {
  test('43.51 L by steam at 650 m: 4 batches, 26 min up, 51 held, 508 min, 56 attended, 119.76 degC', async () => {
    expect(await treat(...leaves, '--way', 'steam', '--aim', 'sterile')).toEqual({
      batches: 4,
      comeUp: 26,
      hold: 51,
      minutes: 508,
      attended: 56,
      temperature: expect.closeTo(119.763, 3) as number,
      cautions: expect.arrayContaining(["Never promise 'sterile' on a quote. Grower decides."]) as string[],
    });
  });

  test('a vessel and its filling may be given in any unit, and another height', async () => {
    const ofVessel = (...vessel: readonly string[]) => treat(...leaves, '--way', 'boil', '--aim', 'clean', ...vessel);
    expect(await ofVessel('--vessel', '30', '--fill', '50 %')).toMatchObject({ batches: 3, minutes: 150 });
    expect(await ofVessel('--vessel', '30000 mL', '--fill', '0.5')).toMatchObject({ batches: 3 });
    expect(await ofVessel('--altitude', '1500 m')).toMatchObject({ temperature: expect.closeTo(95, 1) as number });
  });

  test('without a way all stand side by side, and one is suggested', async () => {
    expect(await treat(...leaves, '--aim', 'clean', '--moistened')).toMatchObject({
      suggested: 'bake',
      ways: { steam: { minutes: 508 }, boil: { minutes: 200 }, bake: { minutes: 136, attended: 28 } },
    });
  });

  test('high up water is too cool to boil leaves: the oven is suggested, and where that is too hot, steam', async () => {
    const ways = (...more: readonly string[]) => treat(...leaves, '--aim', 'clean', '--altitude', '4500 m', ...more);
    expect(await ways()).toMatchObject({
      suggested: 'bake',
      ways: {
        // By hand: 57.728 kPa of air and 15 psi are 161.149 kPa, 113.52 degC; 30 x 10^0.8484 = 211.6.
        steam: { hold: 212, temperature: expect.closeTo(113.516, 2) as number },
        boil: { refused: 'Water boils at 84.94 C here; boiling leaves needs 90 C or more. Bake or steam them.' },
      },
    });
    expect(await ways('--oven', '130')).toMatchObject({ suggested: 'steam' });
  });

  test('an oven and a gauge may be given in any unit: 110 degC is there after 20 min, 10 psi is held 198', async () => {
    // 25 log10(1.4 x 90 / 20) = 19.98; 93.756 + 68.948 kPa is 113.81 degC, 30 x 10^0.8192 = 197.9.
    expect(await treat(...leaves, '--way', 'bake', '--aim', 'clean', '--oven', '230 degF')).toMatchObject({
      comeUp: 20,
      minutes: 130,
    });
    expect(await treat(...leaves, '--way', 'steam', '--aim', 'clean', '--gauge', '10 psi')).toMatchObject({
      hold: 198,
    });
  });

  test('no leaves are no batches', async () => {
    const none = ['--leaves', '0 L', '--way', 'boil', '--aim', 'clean'];
    expect(await treat(...none)).toMatchObject({ batches: 0, minutes: 0, attended: 0 });
  });

  test('people see the parts of a batch and the cautions', async () => {
    const table = await tableOf(treatCommand, '--book', book(), ...leaves, '--way', 'bake', '--aim', 'clean');
    expect(table).toMatch(/come up +23 min\nhold +30 min\ncool +15 min\n/);
    expect(table).toContain('Bake attended, at 120 C or less. Grower decides.');
  });

  test.each([
    [['--way', 'bake', '--aim', 'sterile'], 1, 'Baking cleans and does not sterilise; only pressure steam does.'],
    [
      ['--way', 'bake', '--aim', 'clean', '--oven', '130'],
      1,
      'Leaves can scorch or catch fire; 120 C is the limit here.',
    ],
    [['--way', 'bake', '--aim', 'clean', '--oven', '88'], 1, 'The core can never reach 90 C in a medium at 88 C.'],
    [
      ['--way', 'steam', '--aim', 'clean', '--gauge', '-5 psi'],
      1,
      'The gauge cannot be below zero: there is no steam under pressure.',
    ],
    [['--way', 'steam', '--aim', 'clean', '--fill', '60'], 1, 'Fill is a share from 0 to 1; you gave 60.'],
    [['--way', 'roast', '--aim', 'clean'], 2, '--way roast: choose steam or boil or bake.'],
    [['--way', 'bake'], 2, 'Say what for: --aim clean, or --aim sterile.'],
    [['--aim', 'clean', '--vessel', '21 L'], 2, 'A vessel belongs to a way: give --way steam, boil or bake with it.'],
    [['--way', 'boil', '--aim', 'clean', '--vessel', '21 kg'], 1, '--vessel 21 kg: give it in L.'],
    [['--way', 'boil', '--aim', 'clean', '--vesel', '21 L'], 2, 'Unknown option --vesel. Did you mean --vessel?'],
  ])('%j ends with %d and says why', async (argv, code, says) => {
    expect(await treat(...leaves, ...argv)).toEqual({ code, says: [says] });
  });
});
