import { describe, expect, test } from 'vitest';
import { claimTub, redateTub, removeTub, startTub } from '#renderer/places/cultures/write-tub.ts';
import { applyChange, invertChange, type Change } from '#shared-calc/records/change.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const kind = records.cultureKind.get('C1');
if (!kind) throw new Error('no kind');
const started = applyChange(records, startTub(records, kind, '2027-03-08'));
const tub = started.tub.get('T-01');
if (!tub) throw new Error('no tub');

function valueOf(done: ReturnType<typeof claimTub>): Change {
  if (!done.ok) throw new Error(done.fault);
  return done.value;
}

describe('startTub', () => {
  test('tubs are numbered after the highest there is', () => {
    expect([...applyChange(started, startTub(started, kind, '2027-03-09')).tub.keys()]).toEqual(['T-01', 'T-02']);
  });
});

describe('claimTub', () => {
  test('a tub is kept for a job, and given free again', () => {
    const claimed = applyChange(started, valueOf(claimTub(tub, 'J01')));
    const own = claimed.tub.get('T-01');
    expect(own?.claimedBy).toBe('J01');
    expect(own && applyChange(claimed, valueOf(claimTub(own, ''))).tub.get('T-01')).toEqual(tub);
  });
});

describe('redateTub', () => {
  test('a day that is none is refused', () => {
    expect(redateTub(tub, '31 Feb', '2027-03-08')).toEqual({
      ok: false,
      fault: 'Started on: "31 Feb" is not a day; write it as 2027-03-08.',
    });
  });
});

describe('removeTub', () => {
  test('a tub taken down comes back with undo', () => {
    const gone = removeTub(tub);
    expect(applyChange(applyChange(started, gone), invertChange(gone)).tub).toEqual(started.tub);
  });
});
