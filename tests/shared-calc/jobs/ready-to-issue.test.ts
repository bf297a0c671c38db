import { describe, expect, test } from 'vitest';
import { readyToIssue, termsNotGiven } from '#shared-calc/jobs/ready-to-issue.ts';
import { houseNotGiven } from '#shared-calc/price/not-given.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed } from '#shared-calc/result.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const workshop = workshopOf(demoRecords());
const bare = { ...workshop, name: '', letterhead: ' ', currency: '', terms: '', quoteValidDays: undefined };
const terms = [
  { what: 'rate', kind: 'workshop', of: 'name', label: 'Name' },
  { what: 'rate', kind: 'workshop', of: 'currency', label: 'Currency' },
  { what: 'rate', kind: 'workshop', of: 'quoteValidDays', label: 'A quote is valid for' },
  { what: 'rate', kind: 'workshop', of: 'terms', label: 'Terms' },
];

describe('readyToIssue', () => {
  test('a quote says who it is from, in what money, how long it holds and on what terms', () => {
    expect(termsNotGiven(workshop)).toEqual([]);
    expect(termsNotGiven(bare)).toEqual(terms);
    expect(termsNotGiven({ ...bare, name: 'Fern & Glass' })).toEqual(terms.slice(1));
  });

  test('what the price lacks and what the terms lack are named together', () => {
    const deposit = houseNotGiven('depositShare');
    expect(readyToIssue(failed({ kind: 'figures-not-given', missing: [deposit] }), bare)).toEqual({
      ok: false,
      fault: { kind: 'figures-not-given', missing: [deposit, ...terms] },
    });
    const other = failed({ kind: 'no-margin', group: 'stone' } as const);
    expect(readyToIssue(other, bare)).toEqual(other);
  });
});
