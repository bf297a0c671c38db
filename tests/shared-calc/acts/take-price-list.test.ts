import { describe, expect, test } from 'vitest';
import { learnedMap, takePriceList } from '#shared-calc/acts/take-price-list.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { applyChange, invertChange, isEmptyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';

type Input = Parameters<typeof takePriceList.run>[1];

const records = demoRecords();
const from = '2028-01-12';

function take(input: Partial<Input>, of: Records = records) {
  const done = takePriceList.run(derive(of, DEMO_DAY), { supplier: 'S-hollin', rows: [], ...input });
  if (!done.ok) throw new Error(sayActFault(done.fault));
  return done.value;
}

function refusal(input: Partial<Input>): string {
  const done = takePriceList.run(derive(records, DEMO_DAY), { supplier: 'S-hollin', rows: [], ...input });
  return done.ok ? 'done' : sayActFault(done.fault);
}

describe('takePriceList', () => {
  test('prices, a new pack and a new material come in as one change, with the article numbers', () => {
    const change = take({
      rows: [
        { act: 'price', pack: 'M01-10', priceCoins: 1020, from, article: 'H-1' },
        {
          act: 'new pack',
          material: 'M01',
          amount: 45.424941408,
          typed: '12 gal',
          priceCoins: 3850,
          from,
          article: 'H-2',
        },
        {
          act: 'new material',
          label: 'Fence post, oak',
          unit: 'each',
          amount: 1,
          priceCoins: 980,
          from,
          article: 'H-3',
        },
        { act: 'new material', label: 'Fence post, oak', unit: 'each', amount: 10, priceCoins: 9000, from },
      ],
      map: { columns: { price: 'Price' }, articles: { 'H-9': 'M02' } },
    });
    expect(change.label).toBe("4 prices of Hollin Lane Growers' Supply");
    const after = applyChange(records, change);
    expect(after.pack.get('M01-10')).toMatchObject({ article: 'H-1' });
    expect(after.pack.get('M01-45.424941408')).toEqual({
      id: 'M01-45.424941408',
      material: 'M01',
      amount: 45.424941408,
      supplier: 'S-hollin',
      article: 'H-2',
      typed: { amount: '12 gal' },
    });
    const [post] = [...after.material.values()].filter(({ label }) => label === 'Fence post, oak');
    expect(post).toMatchObject({ id: 'M36', unit: 'each', supplier: 'S-hollin' });
    expect([...after.pack.values()].filter(({ material }) => material === 'M36').map(({ amount }) => amount)).toEqual([
      1, 10,
    ]);
    expect(after.supplier.get('S-hollin')?.priceList).toEqual({
      columns: { price: 'Price' },
      articles: { 'H-9': 'M02' },
    });
    expect(applyChange(after, invertChange(change)).pack).toEqual(records.pack);
  });

  test('a price of a day that has one is put right, and the same again is nothing', () => {
    const rows: Input['rows'] = [{ act: 'price', pack: 'M01-10', priceCoins: 1020, from }];
    const after = applyChange(records, take({ rows }));
    expect(isEmptyChange(take({ rows }, after))).toBe(true);
    expect(take({ rows: [{ act: 'price', pack: 'M01-10', priceCoins: 1030, from }] }, after)).toMatchObject({
      added: [],
      updated: [{ kind: 'packPrice', to: { priceCoins: 1030, from } }],
    });
  });

  test('a new pack that is there already is that pack; what was remembered is kept beside what is new', () => {
    const rows: Input['rows'] = [{ act: 'new pack', material: 'M01', amount: 10, priceCoins: 1020, from }];
    expect(take({ rows }).added).toMatchObject([{ kind: 'packPrice', record: { pack: 'M01-10' } }]);
    const first = applyChange(records, take({ map: { articles: { a: 'M01' }, dates: 'dmy' } }));
    const second = applyChange(first, take({ map: { articles: { b: 'M02' }, decimal: ',' } }, first));
    expect(second.supplier.get('S-hollin')?.priceList).toEqual({
      articles: { a: 'M01', b: 'M02' },
      dates: 'dmy',
      decimal: ',',
    });
  });

  test('a pack that nobody is named for becomes the supplier’s whose list has it', () => {
    const free = { ...records, pack: new Map([['X-1', { id: 'X-1', material: 'X', amount: 1 }]]) };
    const material = { ...records.material.get('M01'), id: 'X', label: 'Posts', unit: 'each' };
    const { supplier: _, ...ofNobody } = material;
    const of: Records = { ...free, material: new Map([['X', ofNobody as never]]), packPrice: new Map() };
    const after = applyChange(of, take({ rows: [{ act: 'price', pack: 'X-1', priceCoins: 980, from }] }, of));
    expect(after.pack.get('X-1')).toMatchObject({ supplier: 'S-hollin' });
  });

  test.each([
    [{ supplier: 'S-holin' }, 'There is no supplier S-holin. Did you mean S-hollin?'],
    [
      { rows: [{ act: 'price', pack: 'M01-11', priceCoins: 1, from }] },
      'There is no pack M01-11. Did you mean M01-10?',
    ],
    [{ rows: [{ act: 'price', pack: 'T07-1', priceCoins: 1, from }] }, /S-greavel/],
    [{ rows: [{ act: 'new pack', material: 'M99', amount: 1, priceCoins: 1, from }] }, /M99/],
    [{ rows: [{ act: 'price', pack: 'M01-10', priceCoins: 1, from: '2028-02-31' }] }, /2028-02-31/],
    [
      { rows: [{ act: 'new material', label: 'Posts', unit: 'bag', amount: 1, priceCoins: 1, from }] },
      'There is no unit called bag.',
    ],
    [
      {
        rows: [
          { act: 'new material', label: 'Posts', unit: 'each', amount: 1, priceCoins: 1, from },
          { act: 'new material', label: 'Posts', unit: 'kg', amount: 1, priceCoins: 1, from },
        ],
      },
      'Posts is new in each and in kg: give one of them another name.',
    ],
  ] as const)('%j is refused: %s', (input, says) => {
    expect(refusal(input as Partial<Input>)).toMatch(says);
  });
});

describe('learnedMap', () => {
  test('remembers numbers that neither the map nor a pack tells', () => {
    const row = {
      row: 1,
      label: '',
      pack: { amount: 10, unit: 'L' },
      amount: 10,
      unit: 'L',
      priceCoins: 1,
      from,
      isThere: false,
    };
    const known = { id: 'M01-10', material: 'M01', amount: 10, article: 'A' };
    expect(learnedMap(undefined, [{ ...row, article: 'A', material: 'M01', known }])).toBeUndefined();
    expect(learnedMap({ dates: 'dmy' }, [{ ...row, article: 'B', material: 'M01', known }])).toEqual({
      dates: 'dmy',
      articles: { B: 'M01' },
    });
  });
});
