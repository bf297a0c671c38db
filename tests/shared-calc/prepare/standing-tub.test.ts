import { describe, expect, test } from 'vitest';
import { standingOn, tubsOf, type TubFacts } from '#shared-calc/prepare/standing-tub.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

const records = demoRecords();

function kindOf(id: string): CultureKind {
  const kind = records.cultureKind.get(id);
  if (!kind) throw new Error(id);
  return kind;
}

function standing(startedOn: string, on: string, { kind = 'C1', ...more }: Partial<TubFacts> & { kind?: string } = {}) {
  return standingOn({ id: 'K1', startedOn, founders: kindOf(kind).founders, ...more }, kindOf(kind), { on });
}

describe('standingOn', () => {
  const floated = [{ on: '2027-03-08', what: 'used' as const, amount: -3005 }];

  test.each([
    ['grows for its first 28 days', '2027-03-07', [], 'growing', '2027-03-08'],
    ['is ready on the 28th', '2027-03-08', [], 'ready', '2027-03-08'],
    ['gives again 14 days after it was floated', '2027-03-09', floated, 'ready', '2027-03-22'],
    ['and any day from then on', '2027-04-05', floated, 'ready', '2027-04-05'],
  ] as const)('a springtail tub %s', (_, on, moves, ...wanted) => {
    const { is, nextOn, readyOn } = standing('2027-02-08', on, { moves });
    expect([is, nextOn, readyOn]).toEqual([...wanted, '2027-03-08']);
  });

  test('a fly tub gives for 21 days and is used up; nobody counts its flies', () => {
    const flies = (on: string) => standing('2027-03-01', on, { kind: 'C5' });
    expect([flies('2027-03-20'), flies('2027-04-06')].map(({ is, nextOn, animals }) => [is, nextOn, animals])).toEqual([
      ['ready', '2027-03-20', undefined],
      ['used up', undefined, undefined],
    ]);
  });

  test('a count is where it grows from; what was taken before it no longer lowers it', () => {
    const counted = standing('2027-02-08', '2027-03-15', {
      moves: [...floated, { on: '2027-03-15', what: 'counted', amount: 4000 }],
    });
    expect([counted.animals, counted.mayTake]).toEqual([4000, 0]);
  });

  test('a temperature gives a range; outside what the kind stands only a count tells', () => {
    const warm = standing('2027-02-08', '2027-03-08', { degC: 24 });
    // 7 x 2^0.3 = 8.618, from 7 x 1.5^0.3 = 7.906 to 7 x 3^0.3 = 9.733 % a day over 28 days
    expect([warm.from, warm.animals, warm.to].map((each) => Math.round(each ?? 0))).toEqual([6987, 7780, 9023]);
    const cold = standing('2027-02-08', '2027-03-08', { degC: 15 });
    expect([cold.animals, cold.mayTake]).toEqual([undefined, undefined]);
    const counted = standing('2027-02-08', '2027-03-08', {
      degC: 15,
      moves: [{ on: '2027-03-08', what: 'counted', amount: 5000 }],
    });
    expect(counted.animals).toBe(5000);
  });

  test('springtails are fed each week and isopods each fortnight, flies not at all', () => {
    const fed = (kind: string) => standing('2027-03-01', '2027-03-10', { kind }).feedOn;
    expect([fed('C1'), fed('C3'), fed('C5')]).toEqual(['2027-03-15', '2027-03-15', undefined]);
    expect(standing('2027-03-01', '2027-03-08').feedOn).toBe('2027-03-08');
  });
});

describe('tubsOf', () => {
  test('the tubs that stand on the day, in order of their start, with what was taken until then', () => {
    const tub = (id: string, startedOn: string, endedOn?: string) => ({
      id,
      kind: 'C1',
      startedOn,
      spare: false,
      place: '',
      note: '',
      founders: 1250,
      way: 'split' as const,
      ...(endedOn !== undefined && { endedOn }),
    });
    const tubs = [tub('K1', '2027-02-01'), tub('K2', '2027-01-01'), tub('K3', '2027-01-01', '2027-03-01')];
    const move = (id: string, on: string) =>
      ({ id, lot: 'K1', of: 'C1', on, what: 'used', amount: -1, note: '' }) as const;
    const book = withRecords(withRecords(records, 'tub', [...tubs, tub('K4', '2027-04-01')]), 'move', [
      move('M-1', '2027-03-01'),
      move('M-2', '2027-03-03'),
    ]);
    expect(tubsOf(book, 'C1', '2027-03-02').map(({ id, moves }) => [id, moves?.length])).toEqual([
      ['K2', 0],
      ['K1', 1],
    ]);
  });
});
