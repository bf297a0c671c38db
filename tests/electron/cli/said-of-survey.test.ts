import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { placeUses } from '#shared-calc/jobs/place-checks.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';
import { useSaidWhole } from './said-whole.ts';

describe('job survey', () => {
  const { book } = useDemoBook('2027-03-08');
  const survey = (...words: readonly string[]) => lwJson('job', 'survey', 'J01', ...words, '--book', book());
  const refused = async (...words: readonly string[]) =>
    (await lw('job', 'survey', 'J01', ...words, '--book', book())).err.trim();

  test('answers are written as they are typed, and one is taken back', async () => {
    expect(await survey('underFives=no', 'narrowestMm=78 cm', 'humidityWinter=45 %', 'feeder=Caretaker')).toMatchObject(
      {
        job: 'J01',
        survey: { underFives: 'no', narrowestMm: 780, humidityWinter: 0.45, feeder: 'Caretaker', steps: null },
      },
    );
    expect(await survey('narrowestMm=', 'underFives=')).toMatchObject({
      survey: { underFives: 'not asked', narrowestMm: null, feeder: 'Caretaker' },
    });
  });

  test.each([
    ['underFives=maybe', /^Children under five: nothing called "maybe"/],
    ['narrowestMm=30 m', /^Narrowest on the way in is 20000 mm at most/],
    ['underFive=no', 'The survey does not ask underFive. Did you mean underFives?'],
    ['underFives', 'What is the answer? Write underFives=...; underFives= takes it back.'],
  ])('%s is refused with a sentence', async (word, says) => {
    expect(await refused(word)).toMatch(says);
  });
});

describe('with every answer not asked', () => {
  const { book } = useDemoBook('2027-03-08');
  const Limits = z.array(
    z.looseObject({ use: z.string().optional(), holds: z.boolean().nullable(), state: z.string() }),
  );
  const Answer = z.looseObject({
    checks: Limits.optional(),
    columns: z.array(z.looseObject({ checks: Limits })).optional(),
  });

  test.each([
    ['bench', '--job', 'J01'],
    ['quote', '--job', 'J01'],
    ['prepare', '--job', 'J01'],
    ['bench', '--sizes', 'T05'],
  ])('%s %s %s never says that a limit of the place holds', async (...argv) => {
    const { checks = [], columns = [] } = Answer.parse(await lwJson(...argv, '--on', '2027-03-08', '--book', book()));
    const limits = [...checks, ...columns.flatMap((column) => column.checks)].filter(({ use }) =>
      placeUses.some((each) => each === use),
    );
    const sizes = limits.length / 6;
    expect([sizes >= 1, Number.isInteger(sizes)]).toEqual([true, true]);
    expect(new Set(limits.map(({ holds, state }) => `${holds} ${state}`))).toEqual(new Set(['null not known yet']));
  });

  test.each(['checks', 'handover', 'animals-in', 'quote', 'survey'])('nor does the paper %s', async (kind) => {
    const { out } = await lw('paper', kind, '--job', 'J01', '--on', '2027-03-08', '--book', book());
    expect(out).not.toMatch(/, as asked|\n(?:Children under five|Way in|Clear size|Shelf|Sun) {2,}holds/);
    expect(out).toMatch(/[Nn]obody has asked|ask the client/);
  });
});

describe('what is printed of a survey', () => {
  const { said } = useSaidWhole('2027-03-08');

  test('every question with its answer, or whom to ask and for what', async () => {
    await said('job', 'survey', 'J01', 'shelfRatingKg=60', 'sunHours=0');
    const lines = await said('job', 'survey', 'J01');
    expect(lines.filter((line) => /^(Shelf|Sun|Glass|Children|THE PLACE)/.test(line))).toEqual([
      'Children under five       underFives             not asked: client, for animals, plants',
      'THE PLACE',
      'Shelf rating              shelfRatingKg          60\u00a0kg',
      'Sun on the glass, a day   sunHours               0\u00a0h',
      'Glass in the sun          sunAreaM2              none',
    ]);
  });
});
