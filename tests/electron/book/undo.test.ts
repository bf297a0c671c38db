import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Book } from '#electron/book/book.ts';
import { foldHistory, noHistory, type JournalStep } from '#electron/book/history.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { faultOf, newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, quoteOf, removing, sortRecords, tankOf } from '#tests/electron/book/sample-records.ts';

const t07 = tankOf('T07');
const addT07 = adding('add T07', { kind: 'tank', record: t07 });

describe('Book.undo and Book.redo', () => {
  test('a new book has nothing to undo and nothing to redo', () => {
    const book = newBook(addT07);

    expect([book.undo(), book.redo(), book.canUndo(), book.canRedo()]).toEqual([
      { ok: true, value: 'nothing' },
      { ok: true, value: 'nothing' },
      undefined,
      undefined,
    ]);
  });

  test('they are named by the edit they would take back or do again', () => {
    const book = newBook();
    valueOf(book.apply(addT07, 1));
    valueOf(book.apply(changingTank(t07, { note: 'x' }), 2));
    valueOf(book.undo());

    expect([book.canUndo(), book.canRedo()]).toEqual(['add T07', 'change T07']);
  });

  test('they live on after the book was closed', () => {
    const book = newBook();
    valueOf(book.apply(addT07, 1));
    valueOf(book.apply(changingTank(t07, { note: 'x' }), 2));
    valueOf(book.undo());
    book.close();
    const again = reopen(book.path);

    expect(valueOf(again.redo())).toEqual({ revision: 5, label: 'change T07' });
    expect([valueOf(again.undo()), valueOf(again.undo()), valueOf(again.undo())]).toEqual([
      { revision: 6, label: 'change T07' },
      { revision: 7, label: 'add T07' },
      'nothing',
    ]);
    expect(sortRecords(again.records())).toEqual({});
  });

  test('a new edit leaves nothing to redo', () => {
    const book = newBook();
    valueOf(book.apply(addT07, 1));
    valueOf(book.undo());
    valueOf(book.apply(adding('add T08', { kind: 'tank', record: tankOf('T08') }), 3));

    expect([book.canRedo(), valueOf(book.redo())]).toEqual([undefined, 'nothing']);
  });

  test('an issue is not undone, nor anything before it', () => {
    const book = newBook();
    valueOf(book.apply(addT07, 1));
    valueOf(book.apply(adding('issue Q-0001A', { kind: 'issuedQuote', record: quoteOf('Q1', 'Q-0001') }), 2));
    valueOf(book.apply(changingTank(t07, { note: 'x' }), 3));

    expect([book.undo(), book.canUndo(), book.undo()]).toEqual([
      { ok: true, value: { revision: 5, label: 'change T07' } },
      undefined,
      { ok: false, fault: { kind: 'lasting', label: 'issue Q-0001A' } },
    ]);
    expect([...book.records().issuedQuote.keys()]).toEqual(['Q1']);
  });

  test('an issued quote that was removed comes back by undo', () => {
    const quote = { kind: 'issuedQuote', record: quoteOf('Q1', 'Q-0001') } as const;
    const book = newBook(adding('begin', quote));
    valueOf(book.apply(removing('remove Q1', quote), 1));

    expect(valueOf(book.undo())).toEqual({ revision: 3, label: 'remove Q1' });
    expect(book.records().issuedQuote.get('Q1')).toEqual(quote.record);
  });

  test('undo asked for by a window that has not seen the last edit is refused', () => {
    const book = newBook();
    valueOf(book.apply(addT07, 1));
    valueOf(book.apply(changingTank(t07, { note: 'x' }), 2));

    expect(faultOf(book.undo(2))).toEqual({ kind: 'changed-elsewhere', records: [{ kind: 'tank', id: 'T07' }] });
    expect(valueOf(book.undo(3))).toEqual({ revision: 4, label: 'change T07' });
  });

  test('any edits, undos and redos, with the book closed between them, end as on paper', () => {
    fc.assert(
      fc.property(fc.array(anyAct(), { maxLength: 25 }), (acts) => {
        const book = newBook();
        const { path } = book;
        let open = book;
        let paper: Paper = { past: [], now: book.records(), future: [] };
        for (const act of acts) {
          if (act.kind === 'close') {
            open.close();
            open = reopen(path);
          }
          paper = act.kind === 'edit' ? edited(open, paper, act) : stepped(open, paper, act.kind);
          expect(sortRecords(open.records())).toEqual(sortRecords(paper.now));
          expect([open.canUndo(), open.canRedo()]).toEqual([paper.past.at(-1)?.label, paper.future.at(-1)?.label]);
        }
        expect(open.check()).toMatchObject({ value: { sound: true } });
        open.close();
      }),
      { numRuns: 25 },
    );
  });
});

describe('foldHistory', () => {
  test('the journal read at once or piece by piece gives the same history', () => {
    const kinds = fc.constantFrom('do', 'do', 'undo', 'redo', 'migrate' as const);
    const rows = fc.array(kinds).map((list) =>
      list.map((kind, index): JournalStep => ({
        revision: index + 1,
        kind,
        lasting: kind === 'migrate',
        label: `${index}`,
      })),
    );
    fc.assert(
      fc.property(rows, fc.nat(30), (all, cut) => {
        const pieces = foldHistory(foldHistory(noHistory, all.slice(0, cut)), all.slice(cut));

        expect(pieces).toEqual(foldHistory(noHistory, all));
      }),
    );
  });
});

interface Leaf {
  readonly label: string;
  readonly records: Records;
}

interface Paper {
  readonly past: readonly Leaf[];
  readonly now: Records;
  readonly future: readonly Leaf[];
}

type Act =
  | { readonly kind: 'edit'; readonly id: string; readonly note: string }
  | { readonly kind: 'undo' | 'redo' | 'close' };

function anyAct(): fc.Arbitrary<Act> {
  const edit = fc.record({ kind: fc.constant('edit' as const), id: fc.constantFrom('A', 'B', 'C'), note: fc.string() });
  const step = fc.record({
    kind: fc.constantFrom('undo' as const, 'undo' as const, 'redo' as const, 'close' as const),
  });
  return fc.oneof(edit, step);
}

function edited(book: Book, paper: Paper, { id, note }: { readonly id: string; readonly note: string }): Paper {
  const change = tankEdit(paper.now, id, note);
  valueOf(book.apply(change, book.revision()));
  return {
    past: [...paper.past, { label: change.label, records: paper.now }],
    now: applyChange(paper.now, change),
    future: [],
  };
}

function tankEdit(records: Records, id: string, note: string): Change {
  const from = records.tank.get(id);
  if (!from) return adding(`add ${id}`, { kind: 'tank', record: tankOf(id, { note }) });
  return from.note === note ? removing(`remove ${id}`, { kind: 'tank', record: from }) : changingTank(from, { note });
}

function stepped(book: Book, paper: Paper, kind: 'undo' | 'redo' | 'close'): Paper {
  if (kind === 'close') return paper;
  const [from, to] = kind === 'undo' ? [paper.past, paper.future] : [paper.future, paper.past];
  const leaf = from.at(-1);
  const step = valueOf(kind === 'undo' ? book.undo() : book.redo());
  expect(step === 'nothing' ? undefined : step.label).toBe(leaf?.label);
  if (!leaf) return paper;
  const rest = from.slice(0, -1);
  const turned = [...to, { label: leaf.label, records: paper.now }];
  return kind === 'undo'
    ? { past: rest, now: leaf.records, future: turned }
    : { past: turned, now: leaf.records, future: rest };
}
