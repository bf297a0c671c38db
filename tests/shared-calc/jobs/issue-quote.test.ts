import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '#shared-calc/jobs/canonical-json.ts';
import { byIssue, latestQuote, quoteNumberOf } from '#shared-calc/jobs/issue-quote.ts';
import { readQuoteBody, writeQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { reworkQuote, partsOf } from '#shared-calc/jobs/rework-quote.ts';
import type { IssuedQuote, Records } from '#shared-calc/records/records.ts';
import { issued, jobOf, libraryJob, valueOf, withRecords, written } from './demo-jobs.ts';

describe('issueQuote', () => {
  const first = issued(written(libraryJob(), 'client', { 'T05.litter': '20 mm' }), 'A');

  test('the job is quoted, and its answer asked for by the last day the quote holds', () => {
    const { state, nextAct, nextOn } = jobOf(first.records, 'J02');
    expect([state, nextAct, nextOn]).toEqual(['quoted', 'Ask for the answer', '2027-03-29']);
    expect(first.change.label).toBe('quote Q-0001 A of J02 issued');
  });

  test('a job further on stays where it is', () => {
    const records = withRecords(first.records, 'job', [{ ...jobOf(first.records, 'J02'), state: 'accepted' }]);
    expect(jobOf(issued(records, 'B').records, 'J02').state).toBe('accepted');
  });

  test('the body keeps who wrote what, the tank, the recipe, rates and the prices of all tanks', () => {
    const { body } = first;
    expect(body.whole).toEqual([{ line: 'soil_rise', text: '0 mm', note: '', by: 'client' }]);
    expect(body.columns.map(({ size, key, tank, locals }) => [size, key, tank.id, locals])).toEqual([
      ['J02-T05', 'T05', 'T05', [{ line: 'litter', text: '20 mm', note: '', by: 'client' }]],
    ]);
    expect([body.lines.length, body.rates.length, body.margins.length]).toEqual([
      [...first.records.line.values()].filter((line) => line.recipe === 'H1').length,
      4,
      10,
    ]);
    expect(body.goods.filter((goods) => goods.material.startsWith('T')).length).toBe(12);
    expect(body.columns[0]?.figures['soil_front']).toBe(70);
  });

  test('worked again from its body it comes to what it came to', () => {
    expect(valueOf(reworkQuote(partsOf(first.body)))).toEqual(first.body.sums);
  });

  test('the body is read back as it was written', () => {
    const { body } = first.records.issuedQuote.get('Q-0001A') ?? { body: '' };
    expect(writeQuoteBody(first.body)).toBe(body);
  });

  test.each<[string, (records: Records) => Records]>([
    [
      'a house line',
      (records) =>
        withRecords(
          records,
          'line',
          [...records.line.values()].map((line) => ({ ...line, text: '' })),
        ),
    ],
    [
      'every price',
      (records) =>
        withRecords(
          records,
          'packPrice',
          [...records.packPrice.values()].map((price) => ({ ...price, priceCoins: 1 })),
        ),
    ],
    [
      'a material',
      (records) =>
        withRecords(
          records,
          'material',
          [...records.material.values()].map((each) => ({ ...each, label: 'x', unit: 'g' })),
        ),
    ],
    [
      'a tank',
      (records) =>
        withRecords(
          records,
          'tank',
          [...records.tank.values()].map((tank) => ({ ...tank, damHeightMm: 1 })),
        ),
    ],
    [
      'the margins',
      (records) =>
        withRecords(
          records,
          'margin',
          [...records.margin.values()].map((margin) => ({ ...margin, share: 0.9 })),
        ),
    ],
    ['the job itself', (records) => written(records, 'client', { litter: '50 mm', 'T05.litter': '60 mm' })],
  ])('changing %s leaves what was issued as it was', (_, change) => {
    const later = change(first.records);
    expect(later.issuedQuote.get('Q-0001A')).toEqual(first.records.issuedQuote.get('Q-0001A'));
    expect(valueOf(reworkQuote(partsOf(first.body)))).toEqual(first.body.sums);
  });

  test('what no issue has written is not read as a body', () => {
    expect([readQuoteBody(''), readQuoteBody('{}'), readQuoteBody('[1]')]).toEqual([undefined, undefined, undefined]);
  });
});

describe('latestQuote', () => {
  test('revision AA comes after Z, and Q-10000 after Q-9999', () => {
    const names = [
      ['Q-9999', 'Z'],
      ['Q-9999', 'AA'],
      ['Q-10000', 'A'],
      ['Q-9999', 'B'],
    ] as const;
    const quotes = names.map(([number, revision]) => quoteOf(number, revision));
    expect(quotes.toSorted(byIssue).map(({ id }) => id)).toEqual(['Q-9999B', 'Q-9999Z', 'Q-9999AA', 'Q-10000A']);
  });

  test('the next quote of a job is a revision of its number; a job without one has none', () => {
    const { records } = issued(libraryJob(), 'A');
    expect([latestQuote(records, 'J02')?.id, quoteNumberOf(records, 'J02'), quoteNumberOf(records, 'J01')]).toEqual([
      'Q-0001A',
      'Q-0001',
      undefined,
    ]);
  });
});

describe('canonicalJson', () => {
  test('the order in which fields were written does not matter, and what is left out is left out', () => {
    expect(canonicalJson({ b: [1, { d: undefined, c: null }], a: '"' })).toBe(
      String.raw`{"a":"\"","b":[1,{"c":null}]}`,
    );
  });

  test('it says the same data', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (data) => {
        expect(JSON.parse(canonicalJson(data as never))).toEqual(JSON.parse(JSON.stringify(data)));
      }),
    );
  });
});

function quoteOf(number: string, revision: string): IssuedQuote {
  return { id: `${number}${revision}`, number, revision, issuedOn: '2027-03-08', body: '', sha256: '0'.repeat(64) };
}
