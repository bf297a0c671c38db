import { describe, expect, test } from 'vitest';
import { readyToIssue, termsNotGiven } from '#shared-calc/jobs/ready-to-issue.ts';
import { houseNotGiven } from '#shared-calc/price/not-given.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { workedJob } from '#tests/worked-job.ts';
import { libraryJob, valueOf } from './demo-jobs.ts';

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

  test('what the price lacks, what of it is a guess and what the terms lack are named together', () => {
    const deposit = houseNotGiven('depositShare');
    const known = valueOf(workedJob(libraryJob(), { id: 'J02' }, DEMO_DAY).known());
    const sums = { ...known, missing: [deposit], guesses: [{ of: 'M01', label: 'Clay' }] };
    const guess = { what: 'price', of: 'M01', label: 'Clay (a guess)' };
    expect(readyToIssue(ok(sums), bare)).toEqual({
      ok: false,
      fault: { kind: 'figures-not-given', missing: [deposit, guess, ...terms] },
    });
    expect(readyToIssue(ok(known), workshop)).toEqual(ok(known));
    const other = failed({ kind: 'no-margin', group: 'stone' } as const);
    expect(readyToIssue(other, bare)).toEqual(other);
  });
});
