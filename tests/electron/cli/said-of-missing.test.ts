import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { useSaidWhole, type Said } from './said-whole.ts';

/* A workshop that has no price of cover glass and of the tank, and only guesses what tree-fern fibre costs. */
const gone = ['M25b-1@start', 'M04-6@start', 'T05-1@start', 'M01-45@start'];
const guess = { id: 'M07-8@start', pack: 'M07-8', from: '2026-01-01', priceCoins: 1350, guess: true };

const turns: readonly Said[] = [
  [
    ['prices', 'missing', '--sizes', 'T05'],
    [
      '      material                          needed  pack       supplier                     price, cr  from     at stake  jobs',
      '----  -----------------------------  ---------  ---------  ---------------------------  ---------  -------  --------  ----',
      'T05   Rectangle 600 × 445 × 600              1  1          Greavel Pane Cutters',
      'M25b  Cover glass 4 mm, cut to size  0.2495\u00a0m²  1.0000\u00a0m²  Greavel Pane Cutters',
      "M07   Tree-fern fibre                   6.08\u00a0L  8.00\u00a0L     Hollin Lane Growers' Supply      13.50  a guess     10.26",
    ],
  ],
  [
    ['run', '--sizes', 'T05', '--materials', 'M25b,M01'],
    [
      '      material                       needed      packs     together  alone   left',
      '----  -----------------------------  ------  --  --------  --------  -----  -----',
      'M01   Expanded clay 8-16 mm           9.822  L   1 x 10 L      9.80   9.80  0.178',
      'M25b  Cover glass 4 mm, cut to size   0.250  m2  no price',
      '',
      'supplier                     goods  carriage',
      '---------------------------  -----  --------',
      "Hollin Lane Growers' Supply   9.80      7.50",
      '',
      'together at least 9.80, landed at least 9.80 cr; 1 price missing',
      'not known yet: price of Cover glass 4 mm, cut to size',
    ],
  ],
];

const lacks = [
  'not known yet: price of Rectangle 600 × 445 × 600',
  'not known yet: price of Cover glass 4 mm, cut to size',
  'a guess: price of Tree-fern fibre',
];
const Told = z.object({
  atLeast: z.boolean(),
  missing: z.array(z.unknown()),
  guesses: z.array(z.unknown()),
  hours: z.number(),
});

describe('what is printed of missing prices', () => {
  const { said, saidInTurn } = useSaidWhole();

  beforeAll(async () => {
    const records = gone.map((id) => ({ kind: 'packPrice', id }));
    await said('act', 'removeAll', JSON.stringify({ records }));
    await said('act', 'put', JSON.stringify({ kind: 'packPrice', record: guess }));
  });

  test('each with what is needed, who sells it and what is at stake; a run says what it comes to so far', async () => {
    const told = await saidInTurn(turns);
    const uncautioned = told.map(([argv, says]): Said => {
      const under = says.findIndex((line) => line.startsWith('Caution'));
      return [argv, under < 0 ? says : says.slice(0, under - 1)];
    });
    expect(uncautioned).toEqual(turns);
  });

  test('a quote and its paper say at least, name every price, and cannot be issued', async () => {
    const quote = await said('quote', '--sizes', 'T05');
    expect(quote.filter((line) => line.startsWith('price ') || lacks.includes(line))).toEqual([
      'price at least 1372.00 cr, deposit at least 550.00, 10.5 h',
      ...lacks,
    ]);
    const [title] = await said('paper', 'quote', '--sizes', 'T05');
    expect(title).toBe('Quote, not to be given: 2 prices missing; 1 price is a guess');
    expect(await said('quote', '--sizes', 'T05', '--issue')).toEqual([
      '! Not known yet: price of Rectangle 600 × 445 × 600; price of Cover glass 4 mm, cut to size; price of Tree-fern fibre (a guess).',
    ]);
  });

  test('programs read the same: what is missing, what is a guess, hours as they are; refused, the whole list', async () => {
    const [told = ''] = await said('quote', '--sizes', 'T05', '--json');
    expect(Told.parse(JSON.parse(told))).toEqual({
      atLeast: true,
      missing: [
        { what: 'price', of: 'T05', label: 'Rectangle 600 × 445 × 600' },
        { what: 'price', of: 'M25b', label: 'Cover glass 4 mm, cut to size' },
      ],
      guesses: [{ of: 'M07', label: 'Tree-fern fibre' }],
      hours: 10.5,
    });
    const [refused = ''] = await said('quote', '--sizes', 'T05', '--issue', '--json');
    expect(JSON.parse(refused)).toMatchObject({
      fault: { kind: 'figures-not-given', missing: [{ of: 'T05' }, { of: 'M25b' }, { of: 'M07' }] },
    });
    const [needs = ''] = await said('needs', '--sizes', 'T05', '--materials', 'M25b', '--json');
    expect(JSON.parse(needs)).toMatchObject({
      needs: [{ material: 'M25b', used: 0.249546, packs: null, cost: null, packsCost: null }],
      atLeast: true,
    });
  });

  test('prices that are given, and a guess that was asked, make it whole', async () => {
    await said('act', 'confirmPrices', JSON.stringify({ materials: ['M07'] }));
    for (const [material, priceCoins] of [
      ['T05', 14_800],
      ['M25b', 4650],
    ] as const)
      await said('act', 'putPrice', JSON.stringify({ material, amount: 1, priceCoins }));
    expect(await said('prices', 'missing', '--sizes', 'T05')).toEqual(['No price is missing, and none is a guess.']);
    const [quote = ''] = await said('quote', '--sizes', 'T05', '--json');
    expect(Object.keys(z.record(z.string(), z.unknown()).parse(JSON.parse(quote)))).not.toContain('atLeast');
  });
});
