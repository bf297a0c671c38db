import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workedJob } from '#tests/worked-job.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, issued, libraryJob, valueOf, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

function draftOf(records: Records) {
  const derived = derive(records, DEMO_DAY);
  return draftQuote(derived, workedJob(records, { id: 'J02' }, DEMO_DAY));
}

describe('draftQuote', () => {
  test('what stands on the page is what would be issued, but for its number', () => {
    const records = libraryJob();
    const { number: _, revision: __, ...draft } = valueOf(draftOf(records)).body;
    const { number: ___, revision: ____, ...body } = issued(records, 'A').body;
    expect(draft).toEqual(body);
  });

  test('a job without a size says so', () => {
    const records = libraryJob();
    const bare = after(records, setSizes(records, 'J02', []));
    expect(faultOf(draftOf(bare))).toEqual({ kind: 'no-sizes', job: 'J02' });
  });

  test('one that lacks a figure shows what is known without it, and names the figure once', () => {
    const whole = valueOf(draftOf(libraryJob()));
    const lacking = valueOf(draftOf(written(libraryJob(), 'us', { 'T05.litter': '' })));
    expect(lacking.sums.missing).toEqual([
      { what: 'measure', of: 'T05', label: 'T05, litter depth', at: { line: 'litter', column: 'T05' } },
    ]);
    expect(lacking.body.sums.costCoins).toBeGreaterThan(0);
    expect(lacking.body.sums.costCoins).toBeLessThan(whole.body.sums.costCoins);
  });
});
