import { describe, expect, test } from 'vitest';
import { faultOf, newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, removing, supplierOf, tankOf } from '#tests/electron/book/sample-records.ts';

const t07 = tankOf('T07');
const t08 = tankOf('T08');

function twoWindows() {
  const one = newBook(adding('begin', { kind: 'tank', record: t07 }, { kind: 'tank', record: t08 }));
  return { one, other: reopen(one.path) };
}

describe('one book in two windows', () => {
  test('each is told of the other, once, and reads what was written', () => {
    const { one, other } = twoWindows();
    valueOf(one.apply(changingTank(t07, { note: 'mine' }), 1));
    const changed = [one.changedElsewhere(), other.changedElsewhere()];

    expect([changed, other.records().tank.get('T07')?.note, other.revision()]).toEqual([[false, true], 'mine', 2]);
    expect(other.changedElsewhere()).toBe(false);
  });

  test('an edit of what nobody else touched is taken, though it was made on an older revision', () => {
    const { one, other } = twoWindows();
    valueOf(one.apply(changingTank(t07, { note: 'mine' }), 1));

    expect(valueOf(other.apply(changingTank(t08, { note: 'yours' }), 1))).toEqual({ revision: 3, label: 'change T08' });
    expect([...one.records().tank.values()].map(({ note }) => note)).toEqual(['mine', 'yours']);
  });

  test('an edit of what the other has changed is refused and names it', () => {
    const { one, other } = twoWindows();
    valueOf(one.apply(changingTank(t07, { note: 'mine' }), 1));

    expect(faultOf(other.apply(changingTank(t07, { note: 'yours' }), 1))).toEqual({
      kind: 'changed-elsewhere',
      records: [{ kind: 'tank', id: 'T07' }],
    });
    expect(other.records().tank.get('T07')?.note).toBe('mine');
  });

  test('what the other has removed cannot be referred to any more', () => {
    const one = newBook(adding('begin', { kind: 'supplier', record: supplierOf('S1') }));
    const other = reopen(one.path);
    valueOf(one.apply(removing('remove S1', { kind: 'supplier', record: supplierOf('S1') }), 1));

    expect(faultOf(other.apply(adding('add', { kind: 'tank', record: { ...t07, supplier: 'S1' } }), 1))).toMatchObject({
      kind: 'unknown-reference',
      id: 'S1',
    });
  });

  test('a box written over in both windows at once is kept once', () => {
    const { one, other } = twoWindows();
    const price = (id: string) =>
      adding('price', { kind: 'packPrice', record: { id, pack: 'P', from: '2027-03-01', priceCoins: 1 } });
    valueOf(one.apply(adding('pack', { kind: 'pack', record: { id: 'P', material: 'T07', amount: 1 } }), 1));
    valueOf(one.apply(price('first'), 2));

    expect(faultOf(other.apply(price('second'), 2))).toMatchObject({ kind: 'there-already' });
  });

  test('undo in one window takes back the last edit of either', () => {
    const { one, other } = twoWindows();
    valueOf(one.apply(changingTank(t07, { note: 'mine' }), 1));

    expect([other.canUndo(), valueOf(other.undo())]).toEqual(['change T07', { revision: 3, label: 'change T07' }]);
    expect([one.records().tank.get('T07')?.note, one.canUndo(), one.canRedo()]).toEqual(['', undefined, 'change T07']);
  });

  test('what was done since a revision can be told, whoever did it', () => {
    const { one, other } = twoWindows();
    const change = changingTank(t07, { note: 'mine' });
    valueOf(one.apply(change, 1));
    valueOf(other.undo());
    const step = { label: 'change T07', lasting: false };

    expect(valueOf(one.entriesAfter(1))).toEqual([
      { ...step, revision: 2, kind: 'do', change },
      { ...step, revision: 3, kind: 'undo', change: changingTank({ ...t07, note: 'mine' }, { note: '' }) },
    ]);
  });

  test('closing one leaves the other at work', () => {
    const { one, other } = twoWindows();
    other.close();
    valueOf(one.apply(changingTank(t07, { note: 'mine' }), 1));
    one.close();

    expect(reopen(one.path).records().tank.get('T07')?.note).toBe('mine');
  });
});
