import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Book } from '#electron/book/book.ts';
import { invertChange, type Added, type Change } from '#shared-calc/records/change.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { faultOf, newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import {
  adding,
  changingTank,
  jobOf,
  listRecords,
  oneOfEach,
  quoteOf,
  recipeH1,
  removing,
  sortRecords,
  supplierOf,
  tankOf,
  today,
} from '#tests/electron/book/sample-records.ts';

const t07 = tankOf('T07');
const t08 = tankOf('T08');
const withTanks = () =>
  newBook(adding('begin', { kind: 'tank', record: t07 }, { kind: 'tank', record: t08 }, recipeH1));

describe('Book.apply', () => {
  test('an edit is in the book, has a revision of its own, and is still there after closing', () => {
    const book = withTanks();

    expect(valueOf(book.apply(changingTank(t07, { note: 'scratched' }), 1))).toEqual({
      revision: 2,
      label: 'change T07',
    });
    book.close();
    expect(listRecords(reopen(book.path).records())['tank']).toEqual([{ ...t07, note: 'scratched' }, t08]);
  });

  test('a field that is given as nothing is a field left out', () => {
    const book = withTanks();
    const cleared: Change = { ...changingTank(t07, {}), updated: [{ kind: 'tank', from: t07, to: without(t07) }] };
    valueOf(book.apply(cleared, 1));

    expect(book.records().tank.get('T07')).toStrictEqual({
      id: 'T07',
      label: 'Tank T07',
      shape: 'rectangle',
      clientsOwn: false,
      note: '',
    });
  });

  test('an edit that changes nothing takes no revision', () => {
    const book = withTanks();

    expect(valueOf(book.apply(changingTank(t07, {}), 1)).revision).toBe(1);
    expect(book.canUndo()).toBe(undefined);
  });

  test('an edit that is refused leaves the book as it was', () => {
    const book = withTanks();
    const before = listRecords(book.records());
    const half: Change = {
      ...changingTank(t07, { note: 'new' }),
      added: [{ kind: 'job', record: jobOf('J1', { recipe: 'H9' }) }],
    };

    expect(faultOf(book.apply(half, 1))).toMatchObject({ kind: 'unknown-reference' });
    expect(listRecords(book.records())).toEqual(before);
    expect(book.check()).toMatchObject({ value: { sound: true, revision: 1 } });
  });

  test.each(refusedEdits())('$says is refused', ({ change, on = 1, fault }) => {
    expect(faultOf(newBook(adding('begin', ...oneOfEach)).apply(change, on))).toEqual(fault);
  });

  test('what a book is told is its own: later changes to it by the caller do not reach it', () => {
    const book = withTanks();
    const mine = { ...supplierOf('S1'), deliveryWeekdays: [1, 2] };
    valueOf(book.apply(adding('supplier', { kind: 'supplier', record: mine }), 1));
    mine.deliveryWeekdays.push(3);

    expect(book.records().supplier.get('S1')?.deliveryWeekdays).toEqual([1, 2]);
  });

  test('two materials may trade places in one edit', () => {
    const book = newBook(adding('begin', ...oneOfEach));
    const line = book.records().line.get('H1.clay_need');
    if (!line) throw new Error('no line');
    const other = { ...line, id: 'H1.other', name: 'other' };
    valueOf(book.apply(adding('line', { kind: 'line', record: other }), 1));
    const swap: Change = {
      ...adding('swap'),
      updated: [
        { kind: 'line', from: line, to: { ...line, name: 'other' } },
        { kind: 'line', from: other, to: { ...other, name: 'clay_need' } },
      ],
    };

    expect(valueOf(book.apply(swap, 2)).revision).toBe(3);
  });

  test('any edit undone gives back every record exactly, and done again what it had made', () => {
    const book = newBook(adding('begin', ...oneOfEach));

    fc.assert(
      fc.property(anyEdit(book), (makeEdit) => {
        const before = sortRecords(book.records());
        const change = makeEdit();
        valueOf(book.apply(change, book.revision()));
        const after = sortRecords(book.records());

        expect(valueOf(book.undo())).toMatchObject({ label: change.label });
        expect(sortRecords(book.records())).toEqual(before);
        expect(valueOf(book.redo())).toMatchObject({ label: change.label });
        expect(sortRecords(book.records())).toEqual(after);

        valueOf(book.apply(invertChange(change), book.revision()));
        expect(sortRecords(book.records())).toEqual(before);
        expect(sortRecords(reread(book))).toEqual(before);
      }),
      { numRuns: 40 },
    );
    expect(book.check()).toMatchObject({ value: { sound: true } });
  });
});

function reread(book: Book) {
  const second = reopen(book.path);
  const records = second.records();
  second.close();
  return records;
}

function without(tank: typeof t07): typeof t07 {
  const { insideLengthMm: _, ...rest } = tank;
  return { ...rest, damHeightMm: undefined };
}

/** Edits over suppliers and tanks that the current book must accept. */
function anyEdit(book: Book): fc.Arbitrary<() => Change> {
  const part = fc.record({
    id: fc.constantFrom('A', 'B', 'C', 'D'),
    note: fc.string({ unit: 'binary', maxLength: 8 }),
  });
  const list = fc.uniqueArray(part, { selector: ({ id }) => id, minLength: 1 });
  return fc.record({ label: fc.string({ unit: 'binary' }), suppliers: list }).map(({ label, suppliers }) => () => {
    const changes = suppliers.map(({ id, note }) => suppliersEdit(book, id, note));
    return {
      label,
      added: changes.flatMap((change) => change.added),
      updated: changes.flatMap((change) => change.updated),
      removed: changes.flatMap((change) => change.removed),
    };
  });
}

function suppliersEdit(book: Book, id: string, note: string): Change {
  const from = book.records().supplier.get(id);
  const to = supplierOf(id, { note });
  if (!from) return adding('', { kind: 'supplier', record: to });
  if (note.length % 2 === 0) return removing('', { kind: 'supplier', record: from });
  return sameData(from, to) ? adding('') : { ...adding(''), updated: [{ kind: 'supplier', from, to }] };
}

interface Refused {
  readonly says: string;
  readonly change: Change;
  readonly on?: number;
  readonly fault: unknown;
}

function refusedEdits(): readonly Refused[] {
  const tank = oneOfEach.find((each) => each.kind === 'tank')?.record ?? t07;
  const recorded = (kind: Added['kind'], id: string) => ({ kind, id });
  const oneQuote = quoteOf('Q1', 'Q-0001', { job: 'J01' });
  return [
    {
      says: 'a change of what has changed meanwhile',
      change: changingTank({ ...tank, note: 'as it was' }, { note: 'new' }),
      fault: { kind: 'changed-elsewhere', records: [recorded('tank', 'T07')] },
    },
    {
      says: 'a change of what is gone',
      change: changingTank(t08, { note: 'new' }),
      fault: { kind: 'changed-elsewhere', records: [recorded('tank', 'T08')] },
    },
    {
      says: 'removing what has changed meanwhile',
      change: removing('x', { kind: 'tank', record: t07 }),
      fault: { kind: 'changed-elsewhere', records: [recorded('tank', 'T07')] },
    },
    {
      says: 'a new record under a name that is taken',
      change: adding('x', { kind: 'tank', record: t07 }),
      fault: { kind: 'id-taken', records: [recorded('tank', 'T07')] },
    },
    {
      says: 'an edit of a later revision than the book has',
      change: adding('x', { kind: 'tank', record: t08 }),
      on: 2,
      fault: { kind: 'ahead', onRevision: 2, revision: 1 },
    },
    {
      says: 'a record added twice',
      change: adding('x', { kind: 'tank', record: t08 }, { kind: 'tank', record: t08 }),
      fault: { kind: 'touched-twice', record: recorded('tank', 'T08') },
    },
    {
      says: 'another name for a record',
      change: changingTank(tank, { id: 'T99' }),
      fault: {
        kind: 'not-valid',
        record: recorded('tank', 'T07'),
        issues: [{ field: 'id', code: 'id-changed', says: 'T99' }],
      },
    },
    {
      says: 'a figure that is none',
      change: changingTank(tank, { glassMm: Number.NaN }),
      fault: {
        kind: 'not-valid',
        record: recorded('tank', 'T07'),
        issues: [expect.objectContaining({ field: 'glassMm', code: 'invalid_type' }) as unknown],
      },
    },
    {
      says: 'half a character',
      change: changingTank(tank, { note: 'a\ud800' }),
      fault: {
        kind: 'not-valid',
        record: recorded('tank', 'T07'),
        issues: [{ field: 'note', code: 'broken-text', says: 'half a character' }],
      },
    },
    {
      says: 'a tank from an unknown supplier',
      change: changingTank(tank, { supplier: 'S9' }),
      fault: {
        kind: 'unknown-reference',
        record: recorded('tank', 'T07'),
        field: 'supplier',
        kinds: ['supplier'],
        id: 'S9',
      },
    },
    {
      says: 'a pack of what is neither a material nor a tank',
      change: adding('x', { kind: 'pack', record: { id: 'X', material: 'M99', amount: 1 } }),
      fault: {
        kind: 'unknown-reference',
        record: recorded('pack', 'X'),
        field: 'material',
        kinds: ['material', 'tank', 'plant'],
        id: 'M99',
      },
    },
    {
      says: 'removing a tank that is on a bench and in a pack',
      change: removing('x', { kind: 'tank', record: tank }),
      fault: {
        kind: 'still-used',
        record: recorded('tank', 'T07'),
        by: [recorded('pack', 'T07-1'), recorded('size', 'J01-T07')],
      },
    },
    {
      says: 'a second price of a pack from the same day',
      change: adding('x', {
        kind: 'packPrice',
        record: { id: 'again', pack: 'M01-10', from: '2027-03-01', priceCoins: 990 },
      }),
      fault: {
        kind: 'there-already',
        record: recorded('packPrice', 'again'),
        other: recorded('packPrice', 'M01-10@start'),
        fields: ['pack', 'from'],
      },
    },
    {
      says: 'an issued quote altered',
      change: {
        ...adding('x'),
        updated: [{ kind: 'issuedQuote', from: oneQuote, to: { ...oneQuote, issuedOn: today.replace('10', '11') } }],
      },
      fault: { kind: 'issued', record: recorded('issuedQuote', 'Q1') },
    },
    {
      says: 'a quote that is not what its hash says',
      change: adding('x', { kind: 'issuedQuote', record: { ...quoteOf('Q2', 'Q-0002'), body: 'cheaper' } }),
      fault: { kind: 'hash-wrong', record: recorded('issuedQuote', 'Q2') },
    },
    {
      says: 'a number used again',
      change: adding('x', { kind: 'issuedQuote', record: quoteOf('Q2', 'Q-0001', { body: 'another' }) }),
      fault: { kind: 'number-used', number: 'Q-0001', revision: 'A' },
    },
  ];
}
