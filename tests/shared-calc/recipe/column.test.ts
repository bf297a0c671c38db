import { unasked } from '#shared-calc/fields/survey.ts';
import { describe, expect, test } from 'vitest';
import { buildCards } from '#shared-calc/papers/build-card.ts';
import { optionsPage } from '#shared-calc/papers/options-page.ts';
import { pickLists } from '#shared-calc/papers/pick-list.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import { watchCards } from '#shared-calc/papers/watch-card.ts';
import { workedJob } from '#tests/worked-job.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { issued, jobOf, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

const two = [
  { tank: 'T05', count: 1 },
  { tank: 'T07', count: 1 },
];

/** J02; its second size is the one by the window. */
function named(): Records {
  const records = libraryJob({ sizes: two });
  const size = [...records.size.values()].map((each) =>
    each.job === 'J02' && each.tank === 'T07' ? { ...each, label: 'By the window' } : each,
  );
  return { ...records, size: new Map(size.map((each) => [each.id, each])) };
}

describe('calledOf', () => {
  test('a size goes by its name, and by its tank where it has none', () => {
    expect([calledOf({ key: 'T07#2', label: '' }), calledOf({ key: 'T07#2', label: 'By the window' })]).toEqual([
      'T07#2',
      'By the window',
    ]);
  });

  test('every paper calls a size as the bench does', () => {
    const records = named();
    const { bench, pricing } = workedJob(records, jobOf(records, 'J02'), DEMO_DAY);
    const quote = quoteModel(issued(records, 'A').body);
    const papers = {
      build: buildCards(bench, { records, prices: pricing.prices, display: plainDisplay, survey: unasked }),
      picked: pickLists(bench, records, plainDisplay),
      watch: watchCards(bench, plainDisplay),
      options: optionsPage({ bench, pricing, records, on: DEMO_DAY }),
      quote: quote.sizes,
    };
    const called = ['T05', 'By the window'];
    expect(
      Object.fromEntries(Object.entries(papers).map(([paper, of]) => [paper, of.map((each) => each.called)])),
    ).toEqual({
      build: called,
      picked: called,
      watch: called,
      options: called,
      quote: called,
    });
  });
});
