import { describe, expect, test } from 'vitest';
import { readPriceList } from '#shared-calc/acts/price-list.ts';
import type { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { sayListFault } from '#shared-calc/words/say-list-fault.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { inBook, left, place, taken } from './placed-list.ts';

const records = demoRecords();

function refused(text: string, map?: PriceListMap, of: Records = records): string {
  const read = readPriceList(text, { map, workshop: workshopOf(of) });
  return read.ok ? 'read' : sayListFault(read.fault);
}

const columns = { article: 'No', pack: 'Pack', price: 'Price', from: 'Valid' };
const articles = { A1: 'M01', A2: 'M02', A5: 'M05' };
const map: PriceListMap = { columns, articles };

function list(...rows: readonly string[]): string {
  return ['No;Pack;Price;Valid', ...rows, ''].join('\r\n');
}

describe('readPriceList', () => {
  test('a row is a price of the pack that it names, new where the supplier sold none of that size', () => {
    const placed = place(list('A1;10 L;10.20;2028-01-12', 'A1;12 gal;38.00;2028-01-12'), { map });
    expect(taken(placed)).toEqual([
      [1, 'M01', 10, 1020, '2028-01-12'],
      [2, 'M01', 45.424941408, 3800, '2028-01-12'],
    ]);
    expect(placed.taken.map(({ known, beforeCoins }) => [known?.id, beforeCoins])).toEqual([
      ['M01-10', 980],
      [undefined, undefined],
    ]);
  });

  test('the order of dates and the decimal sign are found where the list allows one alone', () => {
    const text = list('A1;10 L;10,20;1/13/2028', 'A2;10 L;1.250,00;2/3/2028');
    expect(taken(place(text, { map }))).toEqual([
      [1, 'M01', 10, 1020, '2028-01-13'],
      [2, 'M02', 10, 125_000, '2028-02-03'],
    ]);
  });

  test('what may be two things is left with both, unless the map, the last list or the workshop says which', () => {
    const text = list('A1;10 L;1,250;1/12/2028');
    expect(left(place(text, { map }))).toEqual([[1, 'Price: "1,250" may be 1250 or 1.25.']]);
    expect(left(place(list('A1;10 L;9;1/12/2028'), { map }))).toEqual([
      [1, 'From: "1/12/2028" may be 2028-12-01 or 2028-01-12.'],
    ]);
    const us = [[1, 'M01', 10, 125_000, '2028-01-12']];
    expect(taken(place(text, { map: { ...map, dates: 'mdy', decimal: '.' } }))).toEqual(us);
    expect(taken(place(text, { map, remembered: { dates: 'mdy', decimal: '.' } }))).toEqual(us);
    const ours = inBook({ dateOrder: 'dmy', decimalComma: true });
    expect(taken(place(text, { map, of: ours }))).toEqual([[1, 'M01', 10, 125, '2028-12-01']]);
  });

  test('what was remembered is enough for the next list, and a map says over it', () => {
    const text = list('A1;10 L;10.20;2028-01-12', 'A2;10 L;11;2028-01-12');
    expect(taken(place(text, { remembered: map }))).toEqual(taken(place(text, { map })));
    expect(left(place(text, { remembered: map, map: { articles: { A2: 'M99' } } }))).toEqual([
      [2, 'Nothing called M99 in the books of materials, tanks and plants. Did you mean M09?'],
    ]);
  });

  test('an article is known by the number of a pack, and a row without a pack is the one that it is of', () => {
    const packs = new Map(
      [...records.pack].map(([id, pack]) => [id, id === 'M01-45' ? { ...pack, article: 'A9' } : pack]),
    );
    const of = { ...records, pack: packs };
    const said = { map: { columns: { article: 'No', price: 'Price' }, from: '2028-01-01' }, of };
    expect(taken(place('No;Price\nA9;33\n', said))).toEqual([[1, 'M01', 45, 3300, '2028-01-01']]);
    expect(left(place('No;Price\nA9;33\n', { ...said, supplier: 'S-greavel' }))).toEqual([
      [1, 'It is not known yet what article A9 is.'],
    ]);
  });

  test.each([
    ['A7;10 L;10.20;2028-01-12', 'It is not known yet what article A7 is.'],
    [';10 L;10.20;2028-01-12', 'Names no article.'],
    ['A1;10 L;on request;2028-01-12', 'Price: "on request" is not an amount of money.'],
    ['A1;10 L;;2028-01-12', 'Price needs a figure.'],
    ['A1;10 L;0.00;2028-01-12', 'The price is 0. Leave it empty while it is not known.'],
    ['A1;10 L;-3;2028-01-12', 'Price: "-3" is below zero.'],
    ['A1;10 L;3.999;2028-01-12', 'Price: "3.999" has a fraction of a coin.'],
    ['A1;10 L;99999999999999999;2028-01-12', 'Price: "99999999999999999" is too large.'],
    ['A1;10 L;=1+1;2028-01-12', 'Price: "=1+1" is not an amount of money.'],
    ['A1;10 L;10.20;soon', 'From: "soon" is not a day; write it as 2026-11-25.'],
    ['A1;10 L;10.20;', 'From needs a day.'],
    ['A1;10;10.20;2028-01-12', 'The pack of 10 has no unit; it is sold in L.'],
    ['A1;;10.20;2028-01-12', 'Names no pack.'],
    ['A1;1 bag;10.20;2028-01-12', 'Pack "1 bag": there is no unit called bag. Say how much a pack holds.'],
    ['A1;10 kg;10.20;2028-01-12', 'The pack is in kg; it is sold in L.'],
    ['A1;10 L;10.20', 'Has 3 cells; the heading has 4.'],
    ['A1;10 L;10;20;2028-01-12', 'Has 5 cells; the heading has 4.'],
    ['A1\u202e;10 L;10.20;2028-01-12', 'The article number holds signs that are not shown.'],
    [`${'A'.repeat(61)};10 L;10.20;2028-01-12`, 'The article number is longer than 60 letters.'],
  ])('%s is left: %s', (row, why) => {
    const placed = place(list('A2;10 L;11;2028-01-12', row, 'A5;9 L;5;2028-01-12'), { map });
    expect(left(placed)).toEqual([[2, why]]);
    expect(taken(placed)).toEqual([
      [1, 'M02', 10, 1100, '2028-01-12'],
      [3, 'M05', 9, 500, '2028-01-12'],
    ]);
  });

  test('a tank is bought by the piece', () => {
    const said = { map: { columns, articles: { A1: 'T07' } }, supplier: 'S-greavel' };
    const placed = place(list('A1;1 EA;221;2028-01-12', 'A1;2;430;2028-01-12'), said);
    expect(taken(placed)).toEqual([[1, 'T07', 1, 22_100, '2028-01-12']]);
    expect(left(placed)).toEqual([[2, 'A tank or a plant is bought by the piece, not as a pack of 2.']]);
  });

  test('a row that repeats another is left; two prices for one pack and day are both left', () => {
    const rows = [
      'A1;10 L;10.20;2028-01-12',
      'A1;10 L;10.20;2028-01-12',
      'A2;10 L;11;2028-01-12',
      'A2;10 L;12;2028-01-12',
    ];
    const placed = place(list(...rows), { map });
    expect(taken(placed)).toEqual([[1, 'M01', 10, 1020, '2028-01-12']]);
    expect(left(placed)).toEqual([
      [2, 'Row 1 says the same.'],
      [3, 'Row 4 has another price for the same pack and day.'],
      [4, 'Row 3 has another price for the same pack and day.'],
    ]);
  });

  test('a workshop with a currency of its own takes one mark for it; one with euros takes no dollars', () => {
    const text = list('A1;10 L;$10.20;2028-01-12', 'A2;10 L;$11.00;2028-01-12');
    expect(taken(place(text, { map }))).toHaveLength(2);
    expect(left(place(text, { map, of: inBook({ currency: 'EUR' }) }))).toEqual([
      [1, 'The price "$10.20" is not in EUR, the currency of the book.'],
      [2, 'The price "$11.00" is not in EUR, the currency of the book.'],
    ]);
    const mixed = list('A1;10 L;$10.20;2028-01-12', 'A2;10 L;€11.00;2028-01-12', 'A5;9 L;5.00 cr;2028-01-12');
    expect(left(place(mixed, { map }))).toEqual([
      [1, 'The price "$10.20": the list has prices in $ and €.'],
      [2, 'The price "€11.00": the list has prices in $ and €.'],
    ]);
  });

  test('a list without decimals is read in a currency without them', () => {
    const yen = inBook({ currency: 'JPY', coinDecimals: 0 });
    const said = { map: { ...map, decimal: '.' as const }, of: yen };
    expect(taken(place(list('A1;10 L;¥1,250;2028-01-12'), said))).toEqual([[1, 'M01', 10, 1250, '2028-01-12']]);
  });

  test.each([
    ['', 'The list has no rows under a heading.'],
    ['hello\nworld\n', 'Say which heading is the article number and which the price. The list has "hello".'],
    ['No;Cost\nA1;3\n', 'Say which heading is the price. The list has "No", "Cost".', { columns: { article: 'No' } }],
    [
      'No;Cost\nA1;3\n',
      'No heading is "Cots", which should be the price. Did you mean Cost? The list has "No", "Cost".',
      { columns: { article: 'No', price: 'Cots' } },
    ],
    ['No;Price;Price\nA1;3;4\n', 'Two columns are headed "Price". Say which by its place: column 2 or column 3.', map],
    [
      'No;Price\nA1;3\n',
      'The list does not say from which day its prices hold. Say the day.',
      { columns: { article: 'No', price: 'Price' } },
    ],
  ] as const)('%j cannot be read: %s', (text, why, said?: PriceListMap) => {
    const asked = said === map ? { ...map, columns: { article: 'No', price: 'Price' } } : said;
    expect(refused(text, asked)).toBe(why);
  });
});

describe('a list that is hard to read', () => {
  const byPlace = {
    columns: { article: 'column 1', pack: 'column 2', price: 'column 3', from: 'column 4' },
    articles,
  };

  test('without a heading its columns are named by their place, and the first row is a row', () => {
    const text = 'A1;10 L;10.20;2028-01-12\nA2;10 L;11;2028-01-12\n';
    expect(taken(place(text, { map: byPlace }))).toEqual([
      [1, 'M01', 10, 1020, '2028-01-12'],
      [2, 'M02', 10, 1100, '2028-01-12'],
    ]);
  });

  test('of two headings alike one is named by its place', () => {
    const text = 'No;Pack;Price;Price;Valid\nA1;10 L;10.20;12.24;2028-01-12\n';
    const said = { ...map, columns: { ...columns, price: 'column 4' } };
    expect(taken(place(text, { map: said }))).toEqual([[1, 'M01', 10, 1224, '2028-01-12']]);
  });

  test('a pack that cannot be read is the one that bears the article number', () => {
    const packs = new Map(
      [...records.pack].map(([id, pack]) => [id, id === 'M01-45' ? { ...pack, article: 'A1' } : pack]),
    );
    const of = { ...records, pack: packs };
    expect(taken(place(list('A1;1 bag;33;2028-01-12'), { map, of }))).toEqual([[1, 'M01', 45, 3300, '2028-01-12']]);
  });

  test('what is typed over a row counts, by the signs of the workshop', () => {
    const text = list('A7;1 bag;on request;2028-01-12', 'A1;10 L;9;2028-01-12');
    const of = inBook({ decimalComma: true, dateOrder: 'dmy' });
    const typed = { material: 'M01', pack: '45 L', price: '31,50', from: '1/2/2028' };
    expect(taken(place(text, { map, of, choices: new Map([[1, typed]]) }))).toEqual([
      [1, 'M01', 45, 3150, '2028-02-01'],
      [2, 'M01', 10, 900, '2028-01-12'],
    ]);
    const leave = new Map([[2, { act: 'leave' } as const]]);
    expect(left(place(text, { map, of, choices: leave })).at(-1)).toEqual([2, 'Left out by choice.']);
  });
});
