import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { buildJob, takeFromStore } from '#shared-calc/acts/build-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { takeLots } from '#shared-calc/buy/take-lots.ts';
import { keepStock, releaseStock } from '#shared-calc/jobs/keep-stock.ts';
import { emptyStore, keptFor, standsOf, withBags, type Bag } from '#tests/shared-calc/buy/lots.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, jobOf, libraryJob, valueOf } from './demo-jobs.ts';

const on = DEMO_DAY;

/** J02 for one T07, with coir 6.0 L and charcoal 2.0 L in the Store and nothing else. */
function oneStack(): Records {
  const records = libraryJob({ sizes: [{ tank: 'T07', count: 1 }] });
  const moves = [...records.move].filter(([, { of }]) => of === 'M05' || of === 'M08');
  return { ...records, move: new Map(moves) };
}

describe('buildJob', () => {
  const media = ['M05', 'M06', 'M07', 'M08', 'M09'];

  test('bought for one T07 and built, the Store keeps coir 1.290, bark 6.290, fern 6.860, charcoal 2.430, moss 7.430', () => {
    const records = oneStack();
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 100, on }));
    const { run } = valueOf(derive(paid, on).run({ jobs: ['J02'], materials: media }));
    expect(run.togetherCoins).toBe(6600);
    const packs = run.materials.flatMap(({ material, packs: bought }) =>
      bought.map(({ id, amount, count }) => ({ id, of: material, amount: amount * count })),
    );
    const stocked = withBags(paid, packs);
    const built = applyChange(stocked, valueOf(buildJob(derive(stocked, on), 'J02')).change);
    expect(jobOf(built, 'J02').state).toBe('built');
    expect(media.map((material) => standsOf(built, material, on).toFixed(3))).toEqual([
      '1.290',
      '6.290',
      '6.860',
      '2.430',
      '7.430',
    ]);
  });

  test('what the Store had not is told, and it never holds less than nothing', () => {
    const records = oneStack();
    const { change, short } = valueOf(takeFromStore(derive(records, on), 'J02'));
    const built = applyChange(records, change);
    expect(['M05', 'M08'].map((material) => standsOf(built, material, on))).toEqual([0, 0]);
    expect(
      short.filter(({ material }) => media.includes(material)).map((each) => [each.material, each.amount.toFixed(3)]),
    ).toEqual([
      ['M05', '7.710'],
      ['M06', '13.710'],
      ['M07', '9.140'],
      ['M08', '2.570'],
      ['M09', '4.570'],
    ]);
  });

  test('panes cut to size and goods of the back room are not looked for in the Store', () => {
    const { short } = valueOf(takeFromStore(derive(oneStack(), on), 'J02'));
    expect(short.filter(({ material }) => ['M25a', 'M25b', 'SP', 'IS', 'VAN'].includes(material))).toEqual([]);
  });
});

describe('a build', () => {
  const plants = (more: Partial<Bag> = {}): Bag => ({ of: 'P04', amount: 9, job: 'J02', ...more });

  test('plants kept for a job leave the Store with it, more than its bench asks for and out of quarantine as well', () => {
    const records = withBags(oneStack(), [plants({ until: '2027-12-01' }), { id: 'K-free', of: 'P04', amount: 5 }]);
    const built = applyChange(records, valueOf(takeFromStore(derive(records, on), 'J02')).change);
    expect([standsOf(records, 'P04', on), standsOf(built, 'P04', on)]).toEqual([14, 5]);
  });

  test('plants of a class meet the need of that class', () => {
    const records = withBags(oneStack(), [plants({ amount: 30, job: undefined })]);
    const { short } = valueOf(takeFromStore(derive(records, on), 'J02'));
    expect(short.map(({ material }) => material)).not.toContain('PG');
    expect(short.map(({ material }) => material)).toContain('PM');
  });
});

describe('keepStock', () => {
  test('what is kept for a job is free for no other, and comes free again', () => {
    const records = oneStack();
    const kept = after(records, keepStock(records, { job: 'J02', goods: 'M05', amount: 4, on }));
    const some = after(kept, keepStock(kept, { job: 'J02', goods: 'M05', amount: -1, on }));
    const free = applyChange(some, releaseStock(some, 'J02', on));
    const amounts = [kept, some, free].map((book) => keptFor(book, 'M05', { on, job: 'J02' }));
    expect([amounts, standsOf(free, 'M05', on)]).toEqual([[4, 3, 0], 6]);
  });

  test.each([
    ['M05', 9, 'The Store cannot keep 9 L of M05: 6 L are free.'],
    ['M05', -1, 'J02 cannot give back 1 L of M05: 0 L are kept for it.'],
    ['M55', 1, 'No material called M55. Did you mean M05?'],
    ['T07', 1, 'The Store cannot keep 1 each of T07: 0 each are free.'],
  ])('%s: %d is refused', (goods, amount, says) => {
    const fault = faultOf(keepStock(oneStack(), { job: 'J02', goods, amount, on }));
    expect(fault && sayJobFault(fault)).toBe(says);
  });
});

describe('takeLots', () => {
  const bag = (id: string, more: Partial<Bag>): Bag => ({ id, of: 'M05', amount: 5, sealed: true, ...more });
  const records = withBags(emptyStore(libraryJob()), [
    bag('sealed', {}),
    bag('opened', { sealed: false }),
    bag('soon', { bestBefore: '2027-04-01' }),
    bag('kept', { job: 'J02' }),
    bag('other', { job: 'J01' }),
    bag('held', { until: '2027-04-01' }),
    bag('past', { bestBefore: '2027-03-01' }),
  ]);
  const ids = (taking: Partial<Parameters<typeof takeLots>[1]>) =>
    takeLots(records, { members: ['M05'], amount: 100, on, from: 'usable', ...taking }).map(({ lot }) => lot.id);

  test('what is kept for the job goes first, then what is open, then what is soonest past its best', () => {
    const parts = takeLots(records, { members: ['M05'], amount: 18, on, job: 'J02', from: 'usable' });
    expect(parts.map(({ lot, amount }) => [lot.id, amount])).toEqual([
      ['kept', 5],
      ['opened', 5],
      ['soon', 5],
      ['sealed', 3],
    ]);
  });

  test('what is kept for another, in quarantine or past its best is never given', () => {
    expect(ids({})).toEqual(['opened', 'soon', 'sealed']);
  });

  test('lost is what was past its best first, and what is kept for others last', () => {
    expect(ids({ from: 'all' })).toEqual(['past', 'opened', 'soon', 'sealed', 'held', 'kept', 'other']);
  });

  test('what was used on a later day is not there to be taken on an earlier one', () => {
    const came = withBags(emptyStore(libraryJob()), [bag('one', {})]);
    const used = { id: 'M-9', lot: 'one', of: 'M05', on: '2027-03-20', what: 'used' as const, amount: -4, note: '' };
    const later = { ...came, move: new Map(came.move).set('M-9', used) };
    const parts = takeLots(later, { members: ['M05'], amount: 3, on, from: 'usable' });
    expect(parts.map(({ amount }) => amount)).toEqual([1]);
  });
});
