import { describe, expect, test } from 'vitest';
import { writeCells } from '#shared-calc/acts/cell-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import { allOpenMeasures, openMeasuresOf } from '#shared-calc/derive/open-measures.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, libraryJob, valueOf, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { workedJob } from '#tests/worked-job.ts';

/** The library's job in tanks whose dam nobody has measured. */
function undammed(records: Records, ids: readonly string[]): Records {
  const tanks = [...records.tank.values()]
    .filter(({ id }) => ids.includes(id))
    .map((tank) => withoutUndefined({ ...tank, damHeightMm: undefined }));
  return withRecords(records, 'tank', tanks);
}

function openOf(records: Records, jobs = ['J02']) {
  return openMeasuresOf(derive(records, DEMO_DAY), jobs);
}

describe('openMeasuresOf', () => {
  test('none where every figure is given', () => {
    expect(openOf(libraryJob())).toEqual([]);
  });

  test('a dam is one row of its tank, with all that waits for it in every job', () => {
    const records = undammed(libraryJob({ sizes: [{ tank: 'T07', count: 1 }] }), ['T07']);
    const [alone] = openOf(records);
    const [both, ...others] = openOf(records, ['J01', 'J02']);
    expect(others).toEqual([]);
    expect(both).toMatchObject({
      id: 'T07, dam',
      thing: 'T07 Rectangle 900 × 445 × 600',
      at: { kind: 'tank', tank: 'T07', key: 'damHeightMm' },
      jobs: ['J01', 'J02'],
    });
    expect(both?.amounts).toBeGreaterThan(alone?.amounts ?? 0);
    expect(both?.quotesCoins).toBeGreaterThan(alone?.quotesCoins ?? 0);
  });

  test('a cell without a figure is a row of its job; what most waits for is first', () => {
    const open = openOf(undammed(written(libraryJob(), 'us', { 'T05.litter': '' }), ['T05']));
    expect(open.map(({ id, at }) => [id, at.kind])).toEqual(
      expect.arrayContaining([
        ['T05, dam', 'tank'],
        ['J02 T05, litter depth', 'cell'],
      ]),
    );
    const amounts = open.map((each) => each.amounts);
    expect(amounts).toEqual(amounts.toSorted((one, other) => other - one));
  });

  test('a dam that this job alone has emptied is written in the job, not in the tank book', () => {
    const [open] = openOf(written(libraryJob(), 'us', { 'T05.dam_height': '' }));
    expect(open?.at).toEqual({ kind: 'cell', job: 'J02', column: 'T05' });
  });

  test('once every row has its figure, the quote lacks none', () => {
    let records = undammed(written(libraryJob(), 'us', { 'T05.litter': '' }), ['T05']);
    const before = valueOf(draftQuote(derive(records, DEMO_DAY), workedJob(records, { id: 'J02' }, DEMO_DAY))).lacks;
    expect(before.map(({ label }) => label)).toEqual(expect.arrayContaining(['T05, dam', 'T05, litter depth']));
    const cells = [{ column: 'T05', line: 'litter', text: '15 mm' }];
    records = after(records, writeCells.run(derive(records, DEMO_DAY), { job: 'J02', cells }));
    const whole = libraryJob().tank.get('T05');
    if (whole) records = withRecords(records, 'tank', [whole]);
    expect(openOf(records)).toEqual([]);
    expect(draftQuote(derive(records, DEMO_DAY), workedJob(records, { id: 'J02' }, DEMO_DAY))).toMatchObject({
      value: { lacks: [] },
    });
  });
});

describe('allOpenMeasures', () => {
  test('a sold job waits for none: it is built as it was sold', () => {
    const records = undammed(libraryJob(), ['T05']);
    const job = records.job.get('J02');
    const sold = job ? withRecords(records, 'job', [{ ...job, state: 'accepted' }]) : records;
    expect([records, sold].map((book) => allOpenMeasures(derive(book, DEMO_DAY)).map(({ id }) => id))).toEqual([
      ['T05, dam'],
      [],
    ]);
  });
});
