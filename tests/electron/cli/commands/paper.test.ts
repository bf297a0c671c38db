import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { paperKinds } from '#shared-calc/papers/all-papers.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { lw, lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book } = useDemoBook();

const on = ['--on', '2027-03-08'] as const;
const text = async (...argv: readonly string[]) => {
  const { code, out, err } = await lw('paper', ...argv, ...on, '--book', book());
  expect([code, err]).toEqual([0, '']);
  return out;
};
const fault = async (...argv: readonly string[]) => {
  const { code, err } = await lw('paper', ...argv, '--book', book());
  return [code, err.trimEnd()];
};

const Paper = z.object({
  kind: z.string(),
  title: z.string(),
  data: z.unknown(),
  warnings: z.array(z.strictObject({ says: z.string(), decides: z.string() })),
  cautions: z.array(z.strictObject({ id: z.string(), says: z.string(), decides: z.string(), source: z.string() })),
});

/** Cautions that a sign of the handover card says in its own words, by its id. */
function signsOf(data: unknown): ReadonlyMap<string, string> {
  const Sign = z.object({ sign: z.string(), act: z.string(), caution: z.string().optional() });
  const cards = z.array(z.object({ notNormal: z.array(Sign) })).parse(data);
  const signs = cards.flatMap(({ notNormal }) => notNormal);
  return new Map(
    signs.flatMap(({ sign, act, caution }) =>
      caution === undefined ? [] : [[caution, `${sign.replaceAll('\u00a0', ' ')}: ${act}`]],
    ),
  );
}

/** Labels need a recorded batch. */
const ofJob = paperKinds.map(({ kind }) => kind).filter((kind) => kind !== 'labels');

describe('papers', () => {
  test('lists every sort with what it is about', async () => {
    expect(await lwJson('papers')).toEqual(paperKinds.map(({ kind, of, says }) => ({ kind, of, says })));
    expect(paperKinds.map(({ kind }) => kind).join(' ')).toBe(
      'quote options inside needs pick run order survey build watch animals-in handover care treatment prep labels checks calendar',
    );
    const { out } = await lw('papers');
    expect(out.trimEnd().split('\n')).toHaveLength(paperKinds.length + 2);
  });
});

describe('paper', () => {
  test.each(ofJob)('%s says each of its cautions with who decides, in text and in JSON', async (kind) => {
    const made = Paper.parse(await lwJson('paper', kind, '--job', 'J01', ...on, '--book', book()));
    expect(made.kind).toBe(kind);
    const written = (await text(kind, '--job', 'J01')).replaceAll('°C', 'degC').replaceAll('m²', 'm2');
    expect(written.startsWith(`${made.title}\n`)).toBe(true);
    const inSigns = kind === 'handover' ? signsOf(made.data) : new Map<string, string>();
    for (const { id, says, decides } of made.cautions) {
      const plain = says.replaceAll('\u00a0', ' ').replaceAll('°C', 'degC').replaceAll('m²', 'm2');
      expect(written).toContain(`${inSigns.get(id) ?? plain} ${whoDecides(decides)}`);
    }
  });

  test.each(['survey', 'build', 'watch', 'animals-in', 'handover', 'care', 'treatment', 'prep', 'checks', 'quote'])(
    '%s is never without a caution',
    async (kind) => {
      const { cautions, warnings } = Paper.parse(await lwJson('paper', kind, '--job', 'J01', ...on, '--book', book()));
      expect(cautions.length + warnings.length).toBeGreaterThan(0);
    },
  );

  test('treatment tells the leaves, the minutes and what to mind', async () => {
    expect(await text('treatment', '--sizes', 'T03', '--way', 'boil')).toBe(
      [
        'Leaf treatment',
        '==============',
        '',
        '6.53 L of leaves, boiled, aim clean. 97.81 °C at 650 m; 1 batch of 50 min. Somebody stays by it from the first minute to the last.',
        '',
        'part     minutes  over at minute  Batch 1',
        '-------  -------  --------------  -------',
        'come up       20              20',
        'hold          15              35',
        'drain         15              50',
        '',
        '! Boiling: Boiling water scalds: two thirds full at most, long gloves, lid lifted away from your face, children out of the room, somebody by it. Grower decides.',
        '! Draining: Carry the pot only when it is cold: lift the leaves out with a sieve, or let it stand before you pour, away from you. Grower decides.',
        '! Aim: Clean is enough: a living tank is not sterile, and a bake does not sterilise. Grower decides.',
        '! Collecting: Collect only where the owner of the land allows it; protected land, and collecting to sell, need a permit. Owner of the land and permits office decide; 36 CFR 223.239; 2.1 from memory, not looked up.',
        '! Leaves and wood: Nothing sprayed and nothing from roadsides; no oleander, yew, laurel cherry, walnut or conifer. Grower decides; from memory.',
        '',
        'Core at its hottest, °C, each batch: ____________________',
        'Treated by: ____________________',
        'Day: ____________________',
        '',
      ].join('\n'),
    );
  });

  test('--size leaves one tank of a job', async () => {
    const all = await text('watch', '--job', 'J01');
    const one = await text('watch', '--job', 'J01', '--size', 'T07');
    expect([all.includes('watch T03\n'), all.includes('watch T07\n')]).toEqual([true, true]);
    expect([one.includes('watch T03\n'), one.includes('watch T07\n')]).toEqual([false, true]);
  });

  test('the inside paper and the quote command come to one price', async () => {
    const { gross } = z
      .object({ gross: z.string() })
      .parse(await lwJson('quote', '--job', 'J01', ...on, '--book', book()));
    const paper = z
      .object({ data: z.object({ gross: z.string() }) })
      .parse(await lwJson('paper', 'inside', '--job', 'J01', ...on, '--book', book()));
    expect(paper.data.gross).toBe(gross);
  });

  test('an issued quote is printed as it was issued', async () => {
    await lw('quote', '--job', 'J01', '--issue', '--book', book());
    const written = await text('quote', '--quote', 'Q-0001A');
    expect(written.startsWith('Quote Q-0001, revision A\n')).toBe(true);
    expect(await fault('quote', '--quote', 'Q-0009A')).toEqual([1, 'No issued quote Q-0009A. Did you mean Q-0001A?']);
  });

  test.each([
    [['labels'], 1, 'No batch is written down yet.'],
    [['build', '--job', 'J01', '--csv'], 1, 'The build paper is no list; leave --csv away.'],
    [['prep', '--sizes', 'T07', '--set', 'plant_quarantine='], 1, /quarantine/i],
    [['survey', '--sizes', 'T07'], 2, "The survey paper is a job's: --job J01."],
    [['biuld', '--job', 'J01'], 2, /^No paper called biuld\. Did you mean build\?/],
    [['build'], 2, 'Say which sizes: --sizes T03,T07x2, or --job J01.'],
    [['build', '--job', 'J01', '--size', 'T99'], 1, /^--size T99: no such size in this order\. Sizes: T03, T07, T08\./],
  ])('%j is refused, and says why', async (argv, code, says) => {
    const [ended, said] = await fault(...argv);
    expect(ended).toBe(code);
    expect(said).toMatch(says);
  });
});
