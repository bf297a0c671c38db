import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
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
    const { number: _, revision: __, ...draft } = valueOf(draftOf(records));
    const { number: ___, revision: ____, ...body } = issued(records, 'A').body;
    expect(draft).toEqual(body);
  });

  test('a job without a size, and one that lacks a figure, say so', () => {
    const records = libraryJob();
    const bare = after(records, setSizes(records, 'J02', []));
    expect(faultOf(draftOf(bare))).toEqual({ kind: 'no-sizes', job: 'J02' });
    const lacking = written(records, 'us', { 'T05.litter': '' });
    const fault = faultOf(draftOf(lacking));
    const { bench } = workedJob(lacking, { id: 'J02' }, DEMO_DAY);
    expect(fault && fault.kind !== 'no-sizes' && sayOrderFault(fault, calledByLines(bench.input()))).toBe(
      'T05, Oak leaves, dry: Waits on litter depth. Needs a figure: litter depth.',
    );
  });
});
