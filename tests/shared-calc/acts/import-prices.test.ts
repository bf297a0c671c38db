import { describe, expect, test } from 'vitest';
import { importPrices } from '#shared-calc/acts/import-prices.ts';
import { applyChange, isEmptyChange } from '#shared-calc/records/change.ts';
import type { Records, Workshop } from '#shared-calc/records/records.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const heading = 'material,pack,unit,price,from';

function list(...rows: readonly string[]): string {
  return [heading, ...rows, ''].join('\r\n');
}

function inBook(over: Partial<Workshop>): Records {
  const workshops = [...records.workshop.values()].map((each) => [each.id, { ...each, ...over }] as const);
  return { ...records, workshop: new Map(workshops) };
}

function refusals(text: string, of: Records = records) {
  return importPrices(text, of).refused.map(({ row, fault }) => [row, sayRowFault(fault)]);
}

describe('importPrices', () => {
  test('a price of a new day is added, and what it was before is told', () => {
    const taken = importPrices(list('M01,10,L,10.20,2027-04-01'), records);
    expect(taken.refused).toEqual([]);
    expect(taken.taken).toEqual([
      { row: 2, material: 'M01', pack: 10, unit: 'L', from: '2027-04-01', priceCoins: 1020, beforeCoins: 980 },
    ]);
    expect(taken.change).toMatchObject({
      added: [{ kind: 'packPrice', record: { pack: 'M01-10', from: '2027-04-01', priceCoins: 1020 } }],
      updated: [],
      removed: [],
    });
  });

  test('a price of a day that has one is put right, and one that is the same changes nothing', () => {
    const right = importPrices(list('M01,10,L,9.90,2027-03-01'), records);
    expect([right.change.added, right.change.updated.map(({ to }) => to)]).toEqual([
      [],
      [expect.objectContaining({ pack: 'M01-10', from: '2027-03-01', priceCoins: 990 })],
    ]);
    expect(isEmptyChange(importPrices(list('M01,10,L,9.80,2027-03-01'), records).change)).toBe(true);
  });

  test('a pack is found by its content in any unit of its kind, and a tank by its code', () => {
    const taken = importPrices(list('M01,10000,mL,10.20,2027-04-01', 'T07,1,each,220,2027-04-01'), records).taken;
    expect(taken.map(({ material, pack, unit, priceCoins }) => [material, pack, unit, priceCoins])).toEqual([
      ['M01', 10, 'L', 1020],
      ['T07', 1, 'each', 22_000],
    ]);
  });

  test('a price that was never set before has nothing to tell', () => {
    expect(importPrices(list('M01,10,L,10.20,2027-02-01'), records).taken[0]).not.toHaveProperty('beforeCoins');
  });

  test('what is taken in fits the records it was made for', () => {
    const { change } = importPrices(list('M01,10,L,10.20,2027-04-01', 'M01,45,L,32,2027-03-01'), records);
    const after = applyChange(records, change);
    expect(after.packPrice.size).toBe(records.packPrice.size + 1);
  });

  test('nothing is taken in while a row is refused, and each is named with its reason', () => {
    const { change, refused } = importPrices(
      list(
        'M01,10,L,10.20,2027-04-01',
        'M99,10,L,1.00,2027-04-01',
        'M01,10,mm,1.00,2027-04-01',
        'M01,11,L,1.00,2027-04-01',
        'M01,45,L,ten,2027-04-01',
        'M01,45,L,1.005,2027-04-01',
        'M01,45,L,-3,2027-04-01',
        'M01,45,L,31.50,1.4.2027',
        'M01,45,L,31.50,2027-02-30',
        'M01,45,L,31.50',
        'M01,none,L,31.50,2027-04-01',
        'M01,10,L,10.30,2027-04-01',
        ',,,,x',
      ),
      records,
    );
    expect(isEmptyChange(change)).toBe(true);
    expect(refused.map(({ row, fault }) => [row, sayRowFault(fault)])).toEqual([
      [3, 'Nothing called M99 in the material book or the tank book. Did you mean M09?'],
      [4, 'M01 is sold in L; "mm" does not fit.'],
      [5, 'M01 has no pack of 11 L. Its packs: 10 L, 45 L.'],
      [6, 'M01: Price: "ten" is not an amount of money.'],
      [7, 'M01: Price: "1.005" has a fraction of a coin.'],
      [8, 'M01: Price: "-3" is below zero.'],
      [9, 'M01: From: "1.4.2027" may be 2027-04-01 or 2027-01-04.'],
      [10, 'M01: From: there is no 2027-02-30 in the calendar.'],
      [11, 'Has 4 fields; the heading has 5.'],
      [12, 'M01: Pack: "none" is not a figure.'],
      [13, 'The price of M01 from 2027-04-01 stands in the list twice.'],
      [14, expect.stringMatching(/^Nothing called /)],
    ]);
  });

  test.each([
    ['an empty file', '', 'The heading lacks material, pack, unit, price, from.'],
    ['a heading with a field less', 'material,pack,unit,price\r\nM01,10,L,1\r\n', 'The heading lacks from.'],
    ['a heading alone', `${heading}\r\n`, 'The file holds no prices.'],
  ])('%s is refused', (_, text, says) => {
    expect(refusals(text)).toEqual([[1, says]]);
  });

  test('the mark at the start, other line ends, blank lines, semicolons and capitals do not matter', () => {
    const one = importPrices(list('M01,10,L,10.20,2027-04-01'), records);
    const forms = [
      `\ufeff${heading}\r\nM01,10,L,10.20,2027-04-01\r\n`,
      `${heading}\nM01,10,L,10.20,2027-04-01`,
      'Material;Pack;Unit;Price;From\r\nM01;10;L;10.20;2027-04-01\r\n',
      'from,price,unit,pack,material,note\r\n2027-04-01,10.20,L,10,M01,"by post, ""new"""\r\n',
    ];
    for (const form of forms) expect(importPrices(form, records)).toEqual(one);
  });

  test('a blank line is passed over, and rows keep the numbers that a person counts', () => {
    expect(refusals(list('', 'M01,10,L,ten,2027-04-01'))).toEqual([
      [3, 'M01: Price: "ten" is not an amount of money.'],
    ]);
  });

  test('in a workshop with a decimal comma prices are written with it', () => {
    const comma = inBook({ decimalComma: true });
    const taken = importPrices('material;pack;unit;price;from\r\nM01;10;L;10,20;2027-04-01\r\n', comma);
    expect(taken.taken.map(({ priceCoins }) => priceCoins)).toEqual([1020]);
  });

  test('a price or a size with two readings, or with the other decimal sign, is asked for', () => {
    expect(refusals(list('M01,10,L,"1,250",2027-04-01', 'M01,"0,900",L,10.20,2027-04-01'))).toEqual([
      [2, 'M01: Price: "1,250" may be 1250 or 1.25.'],
      [3, expect.stringContaining('here the decimal sign is the point: 0.900.')],
    ]);
  });

  test('a currency without small coins takes whole prices only', () => {
    const whole = inBook({ coinDecimals: 0 });
    expect(importPrices(list('M01,10,L,10,2027-04-01'), whole).taken.map(({ priceCoins }) => priceCoins)).toEqual([10]);
    expect(refusals(list('M01,10,L,10.50,2027-04-01'), whole)).toEqual([
      [2, 'M01: Price: "10.50" has a fraction of a coin.'],
    ]);
  });

  test('words that could be run by another program are only words', () => {
    expect(refusals(list('"=HYPERLINK(""x"")",10,L,1,2027-04-01'))).toEqual([
      [2, 'Nothing called =HYPERLINK("x") in the material book or the tank book.'],
    ]);
  });
});
