import { describe, expect, test } from 'vitest';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const started = done(demoRecords(), 'startTub', { kind: 'C1' });
const change = (fields: Parameters<typeof done<'changeTub'>>[2]['fields']) =>
  done(started.records, 'changeTub', { tub: 'K1', fields });

describe('startTub', () => {
  test('tubs are numbered after the highest there is', () => {
    const again = done(started.records, 'startTub', { kind: 'C1' });
    expect([started.label, [...again.records.tub.keys()]]).toEqual([
      `tub K1 of ${demoRecords().cultureKind.get('C1')?.label.toLowerCase()} started`,
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

describe('removeTub', () => {
  test('a tub is taken down', () => {
    const { label, records } = done(started.records, 'removeTub', { tub: 'K1' });
    expect([label, records.tub.size]).toEqual(['tub K1 taken down', 0]);
  });
});
