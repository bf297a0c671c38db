import { describe, expect, test } from 'vitest';
import type { Move, Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const started = done(demoRecords(), 'startTub', { kind: 'C1' });
const change = (fields: Parameters<typeof done<'changeTub'>>[2]['fields']) =>
  done(started.records, 'changeTub', { tub: 'K1', fields });

describe('startTub', () => {
  test('tubs are numbered after the highest there is', () => {
    const again = done(started.records, 'startTub', { kind: 'C1' });
    expect([started.label, [...again.records.tub.keys()]]).toEqual([
      `tub K1 of ${demoRecords().cultureKind.get('C1')?.label} started`,
      ['K1', 'K2'],
    ]);
  });
});

describe('changeTub', () => {
  test('a tub is kept for a job, and given free again', () => {
    const claimed = change({ claimedBy: 'J01' });
    const free = done(claimed.records, 'changeTub', { tub: 'K1', fields: { claimedBy: null } });
    expect([claimed.label, claimed.records.tub.get('K1')?.claimedBy, free.label]).toEqual([
      'tub K1 kept for J01',
      'J01',
      'tub K1 for whichever job comes',
    ]);
    expect(free.records.tub).toEqual(started.records.tub);
  });

  test('each field is named in Undo', () => {
    expect(
      [change({ spare: true }), change({ place: ' shelf 2 ' }), change({ startedOn: '2027-03-01' })].map(
        ({ label }) => label,
      ),
    ).toEqual(['tub K1 is spare', 'place of tub K1', 'tub K1 started on 2027-03-01']);
    expect(change({ place: ' shelf 2 ' }).records.tub.get('K1')?.place).toBe('shelf 2');
  });

  test('a day that is none and a job that is none are refused', () => {
    const fields = { startedOn: '2027-02-31' };
    expect(refused(started.records, 'changeTub', { tub: 'K1', fields })).toBe(
      'There is no 2027-02-31 in the calendar.',
    );
    expect(refused(started.records, 'changeTub', { tub: 'K1', fields: { claimedBy: 'J77' } })).toContain('J77');
  });
});

describe('harvestTub', () => {
  const standing = done(demoRecords(), 'startTub', { kind: 'C1', on: '2026-01-01' }).records;
  const floated = done(standing, 'harvestTub', { tub: 'K1', amount: 2000, job: 'J01', sold: false });

  test('what is over of a floated share is written as wasted, in the same step', () => {
    const moves = movesOf(floated.records).map(({ id, what, job, amount }) => [id, what, job, Math.round(amount)]);
    expect([floated.label, moves]).toEqual([
      '2000 taken from tub K1',
      [
        ['M-1', 'used', 'J01', -2000],
        ['M-1-over', 'wasted', undefined, -6000],
      ],
    ]);
  });

  test('the rest of that day goes to another job, and then nothing is wasted', () => {
    const all = done(floated.records, 'harvestTub', { tub: 'K1', sold: true });
    expect(movesOf(all.records).map(({ what, amount }) => [what, Math.round(amount)])).toEqual([
      ['used', -2000],
      ['sold', -6000],
    ]);
  });

  test('a tub that was harvested goes out of the book with what was taken from it', () => {
    const { records } = done(floated.records, 'removeTub', { tub: 'K1' });
    expect([records.tub.size, movesOf(records)]).toEqual([0, []]);
  });

  test('more than it may give is refused', () => {
    expect(refused(standing, 'harvestTub', { tub: 'K1', amount: 9000, sold: false })).toContain(
      'Tub K1 may give 8,000 on',
    );
  });
});

describe('countTub', () => {
  test('a tub grows from what was counted in it', () => {
    const { label, records } = done(started.records, 'countTub', { tub: 'K1', animals: 900 });
    expect([label, movesOf(records).map(({ what, amount }) => [what, amount])]).toEqual([
      'tub K1 counted',
      [['counted', 900]],
    ]);
  });
});

describe('endTub', () => {
  test('a tub ends on a day and stays in the book', () => {
    const { label, records } = done(started.records, 'endTub', { tub: 'K1', on: '2027-04-01' });
    expect([label, records.tub.get('K1')?.endedOn]).toEqual(['tub K1 ended', '2027-04-01']);
  });
});

describe('removeTub', () => {
  test('a tub is taken down', () => {
    const { label, records } = done(started.records, 'removeTub', { tub: 'K1' });
    expect([label, records.tub.size]).toEqual(['tub K1 taken down', 0]);
  });
});

/** What was taken from tubs and counted in them. */
function movesOf({ move }: Records): readonly Move[] {
  return [...move.values()].filter(({ of }) => of === 'C1');
}
