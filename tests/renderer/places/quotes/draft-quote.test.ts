import { describe, expect, test } from 'vitest';
import { draftQuote } from '#renderer/places/quotes/draft-quote.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, issued, jobOf, libraryJob, valueOf, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('draftQuote', () => {
  test('what stands on the page is what would be issued, but for its number', () => {
    const records = libraryJob();
    const { number: _, revision: __, ...draft } = valueOf(draftQuote(records, jobOf(records, 'J02'), DEMO_DAY));
    const { number: ___, revision: ____, ...body } = issued(records, 'A').body;
    expect(draft).toEqual(body);
  });

  test('a job without a size, and one that lacks a figure, say so', () => {
    const records = libraryJob();
    const bare = after(records, setSizes(records, 'J02', []));
    expect(faultOf(draftQuote(bare, jobOf(bare, 'J02'), DEMO_DAY))).toBe(
      'J02 has no size yet: take one on the size bench, and its price stands here.',
    );
    const lacking = written(records, 'us', { 'T05.litter': '' });
    expect(faultOf(draftQuote(lacking, jobOf(lacking, 'J02'), DEMO_DAY))).toBe(
      'T05, Oak leaves, dry: Waits on litter depth. Needs a figure: litter depth.',
    );
  });
});
