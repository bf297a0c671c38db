import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fits, isDone, rebase } from '#renderer/store/pending-edits.ts';
import { applyChange, invertChange, type Change } from '#shared-calc/records/change.ts';
import type { Records, Tank } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const tanks = [...records.tank.values()];

function noted(tank: Tank, note: string): Change {
  return { label: note, added: [], updated: [{ kind: 'tank', from: tank, to: { ...tank, note } }], removed: [] };
}

const anyEdit = fc.record({ at: fc.nat(tanks.length - 1), note: fc.string({ minLength: 1 }) });

/** Edits made one after the other, each on the result of those before it. */
function madeOn(start: Records, edits: readonly { readonly at: number; readonly note: string }[]): readonly Change[] {
  let now = start;
  return edits.flatMap(({ at, note }) => {
    const tank = now.tank.get(tanks[at]?.id ?? '');
    if (!tank || tank.note === note) return [];
    const change = noted(tank, note);
    now = applyChange(now, change);
    return [change];
  });
}

describe('fits and isDone', () => {
  test('a change fits where it was made, is done once it is made, and fits again once it is taken back', () => {
    fc.assert(
      fc.property(anyEdit, ({ at, note }) => {
        const tank = tanks[at];
        fc.pre(tank !== undefined && tank.note !== note);
        const change = noted(tank, note);
        const after = applyChange(records, change);
        expect([fits(records, change), isDone(records, change)]).toEqual([true, false]);
        expect([fits(after, change), isDone(after, change)]).toEqual([false, true]);
        expect(fits(applyChange(after, invertChange(change)), change)).toBe(true);
      }),
    );
  });

  test('a record that is there already cannot be added', () => {
    const [tank] = tanks;
    if (!tank) throw new Error('no tank');
    const change: Change = { label: 'again', added: [{ kind: 'tank', record: tank }], updated: [], removed: [] };
    expect([fits(records, change), isDone(records, change)]).toEqual([false, true]);
  });
});

describe('rebase', () => {
  test('on the book they were made on all edits are kept, and come to the same', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { maxLength: 12 }), (edits) => {
        const changes = madeOn(records, edits);
        const now = rebase(records, changes);
        expect([now.kept, now.lost]).toEqual([changes, []]);
        expect(now.records.tank).toEqual(changes.reduce<Records>(applyChange, records).tank);
      }),
    );
  });

  test('only what somebody else changed meanwhile is lost', () => {
    const [one, other] = tanks;
    if (!one || !other) throw new Error('no tanks');
    const theirs = applyChange(records, noted(one, 'theirs'));
    const ours = [noted(one, 'ours'), noted(other, 'ours too')];
    const now = rebase(theirs, ours);
    expect([now.kept, now.lost]).toEqual([[ours[1]], [ours[0]]]);
    expect([now.records.tank.get(one.id)?.note, now.records.tank.get(other.id)?.note]).toEqual(['theirs', 'ours too']);
  });
});
