import { describe, expect, test } from 'vitest';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const started = done(demoRecords(), 'startTub', { kind: 'C1' });
const change = (fields: Parameters<typeof done<'changeTub'>>[2]['fields']) =>
  done(started.records, 'changeTub', { tub: 'T-01', fields });

describe('startTub', () => {
  test('tubs are numbered after the highest there is', () => {
    const again = done(started.records, 'startTub', { kind: 'C1' });
    expect([started.label, [...again.records.tub.keys()]]).toEqual([
      `tub T-01 of ${demoRecords().cultureKind.get('C1')?.label.toLowerCase()} started`,
      ['T-01', 'T-02'],
    ]);
  });
});

describe('changeTub', () => {
  test('a tub is kept for a job, and given free again', () => {
    const claimed = change({ claimedBy: 'J01' });
    const free = done(claimed.records, 'changeTub', { tub: 'T-01', fields: { claimedBy: null } });
    expect([claimed.label, claimed.records.tub.get('T-01')?.claimedBy, free.label]).toEqual([
      'tub T-01 kept for J01',
      'J01',
      'tub T-01 for whichever job comes',
    ]);
    expect(free.records.tub).toEqual(started.records.tub);
  });

  test('each field is named in Undo', () => {
    expect(
      [change({ spare: true }), change({ place: ' shelf 2 ' }), change({ startedOn: '2027-03-01' })].map(
        ({ label }) => label,
      ),
    ).toEqual(['tub T-01 is spare', 'place of tub T-01', 'tub T-01 started on 2027-03-01']);
    expect(change({ place: ' shelf 2 ' }).records.tub.get('T-01')?.place).toBe('shelf 2');
  });

  test('a day that is none and a job that is none are refused', () => {
    const fields = { startedOn: '2027-02-31' };
    expect(refused(started.records, 'changeTub', { tub: 'T-01', fields })).toBe(
      'There is no 2027-02-31 in the calendar.',
    );
    expect(refused(started.records, 'changeTub', { tub: 'T-01', fields: { claimedBy: 'J77' } })).toContain('J77');
  });
});

describe('removeTub', () => {
  test('a tub is taken down', () => {
    const { label, records } = done(started.records, 'removeTub', { tub: 'T-01' });
    expect([label, records.tub.size]).toEqual(['tub T-01 taken down', 0]);
  });
});
