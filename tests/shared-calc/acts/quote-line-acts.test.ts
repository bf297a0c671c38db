import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import type { QuoteLine, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { workedJob } from '#tests/worked-job.ts';
import { done, refused } from './do-act.ts';

const stand = { job: 'J02', label: 'Oak stand', group: 'hardscape', costCoins: 6000, by: 'client' } as const;
const withStand = done(libraryJob(), 'addQuoteLine', stand);
const linesOf = ({ quoteLine }: Records): readonly QuoteLine[] =>
  [...quoteLine.values()].filter(({ job }) => job === 'J02');

describe('addQuoteLine', () => {
  test("a stand at 60.00 stands on the quote at its group's margin of 40 %", () => {
    const then = withStand.records;
    const { body } = valueOf(draftQuote(derive(then, DEMO_DAY), workedJob(then, { id: 'J02' }, DEMO_DAY)));
    expect([withStand.label, body.sums.lines.at(-1)]).toEqual([
      'J02: Oak stand on its quote',
      {
        group: 'hardscape',
        label: 'Oak stand',
        costCoins: 6000,
        reserveCoins: 0,
        margin: 0.4,
        priceCoins: 10_000,
        taxClass: 'standard',
      },
    ]);
  });

  test('two lines of the same name are two lines', () => {
    expect(linesOf(done(withStand.records, 'addQuoteLine', stand).records).map(({ id }) => id)).toEqual([
      'J02-line-1',
      'J02-line-2',
    ]);
  });

  test('a line has words, and a group that gives its margin', () => {
    expect(refused(libraryJob(), 'addQuoteLine', { ...stand, label: ' ' })).toBe('A line needs its words.');
    expect(refused(libraryJob(), 'addQuoteLine', { ...stand, group: 'gifts' })).toContain('gifts');
  });
});

describe('changeQuoteLine', () => {
  test('its cost is put right, its words are not emptied', () => {
    const cheaper = done(withStand.records, 'changeQuoteLine', { line: 'J02-line-1', fields: { costCoins: 5000 } });
    expect(linesOf(cheaper.records)[0]?.costCoins).toBe(5000);
    expect(refused(withStand.records, 'changeQuoteLine', { line: 'J02-line-1', fields: { label: ' ' } })).toBe(
      'A line needs its words.',
    );
  });
});

describe('removeQuoteLine', () => {
  test('it goes off the quote', () => {
    const { label, records } = done(withStand.records, 'removeQuoteLine', { line: 'J02-line-1' });
    expect([label, linesOf(records)]).toEqual(['J02: Oak stand off its quote', []]);
  });
});
