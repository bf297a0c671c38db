import { batch, signal, type Signal } from '@preact/signals';
import { contextNow, type BookApi, type BookContext } from '#renderer/books/book-api.ts';
import type { BoxText } from '#renderer/books/write-boxes.ts';
import { readTextFile, type PickedText } from '#renderer/files/pick-text.ts';
import type { ListFault } from '#shared-calc/acts/price-list.ts';
import type { RowChoice } from '#shared-calc/acts/row-choice.ts';
import { learnedMap, takenRow } from '#shared-calc/acts/take-price-list.ts';
import { memo } from '#shared-calc/records/memo.ts';
import type { Result } from '#shared-calc/result.ts';
import { goodsOf, isUnknown, shownRows, type ShownRow } from './list-rows.ts';
import { beginMatching, readMatching, supplierOf, type MatchedList, type Matching } from './read-matching.ts';
import { editOf } from './row-edit.ts';

/** Which rows are shown. */
export type Showing = 'all' | 'taken' | 'left';

export interface ListState {
  readonly api: BookApi;
  readonly matching: Signal<Matching | undefined>;
  /** Whose list it is, or will be; empty while nobody has said. */
  readonly supplier: Signal<string>;
  readonly showing: Signal<Showing>;
  readonly take: (picked: PickedText) => void;
  readonly takeFile: (file: File) => void;
  readonly chooseSupplier: (supplier: string) => void;
  readonly set: (next: Partial<Matching>) => void;
  readonly close: () => void;
  /** The list as it is matched now; nothing while there is none. */
  readonly read: (context: BookContext) => Result<MatchedList, ListFault> | undefined;
  readonly allRows: (context: BookContext) => readonly ShownRow[];
  /** Those that are to be shown. */
  readonly rows: (context: BookContext) => readonly ShownRow[];
  /** Texts that were accepted in cells. */
  readonly written: (texts: readonly BoxText[]) => void;
  readonly choose: (choices: readonly (readonly [row: number, choice: RowChoice])[]) => void;
}

/** A list that is being matched; it stays while other views are shown. */
export function openListState(api: BookApi): ListState {
  const matching = signal<Matching | undefined>(undefined);
  const supplier = signal('');
  const showing = signal<Showing>('all');
  const now = () => api.derived.peek();
  const begin = (picked: PickedText, whose: string) =>
    batch(() => {
      supplier.value = whose;
      showing.value = 'all';
      matching.value = beginMatching({ ...picked, supplier: whose }, now());
    });
  const take = (picked: PickedText) => begin(picked, supplierOf(picked.text, now()) ?? supplier.peek());
  const set = (next: Partial<Matching>) => {
    if (matching.value) matching.value = { ...matching.value, ...next };
  };
  const choose: ListState['choose'] = (some) => set({ choices: withChoices(matching.peek()?.choices, some) });
  const { read, allRows, rows } = reading(matching, showing);
  return {
    api,
    matching,
    supplier,
    showing,
    take,
    takeFile: (file) => void readTextFile(file).then((text) => (text.ok ? take(text.value) : api.refuse(text.fault))),
    chooseSupplier: (whose) => {
      const list = matching.peek();
      if (list) begin(list, whose);
      else supplier.value = whose;
    },
    set,
    close: () => (matching.value = undefined),
    read,
    allRows,
    rows,
    written: (texts) => choose(choicesOf(texts, allRows(now()), now())),
    choose,
  };
}

function reading(matching: ListState['matching'], showing: ListState['showing']) {
  const readMemo = memo<Result<MatchedList, ListFault>>();
  const rowsMemo = memo<readonly ShownRow[]>();
  const shownMemo = memo<readonly ShownRow[]>();
  const read: ListState['read'] = (context) => {
    const list = matching.value;
    return list && readMemo([list, context.records, context.today], () => readMatching(list, context));
  };
  const allRows: ListState['allRows'] = (context) => {
    const matched = read(context);
    if (!matched?.ok || !matching.value) return [];
    const { choices } = matching.value;
    return rowsMemo([matched, context.records], () => shownRows(matched.value, choices, goodsOf(context)));
  };
  const rows: ListState['rows'] = (context) => {
    const [all, show] = [allRows(context), showing.value];
    if (show === 'all') return all;
    return shownMemo([all, show], () => all.filter(({ placed }) => (placed === undefined) === (show === 'left')));
  };
  return { read, allRows, rows };
}

/** Several texts may stand in one row. */
function choicesOf(
  texts: readonly BoxText[],
  rows: readonly ShownRow[],
  context: BookContext,
): readonly (readonly [number, RowChoice])[] {
  const byId = new Map(rows.map((row) => [row.id, row]));
  const made = new Map<number, RowChoice>();
  for (const { row: id, column, text } of texts) {
    const row = byId.get(id);
    if (!row) continue;
    const choice = made.get(row.row.row) ?? row.choice;
    const edited = editOf[column]?.({ ...row, ...(choice && { choice }) }, text.trim(), context);
    if (edited?.ok) made.set(row.row.row, edited.value);
  }
  return [...made];
}

function withChoices(
  before: Matching['choices'] = new Map(),
  some: readonly (readonly [number, RowChoice])[],
): Matching['choices'] {
  const next = new Map(before);
  for (const [row, choice] of some) {
    if (Object.keys(choice).length === 0) next.delete(row);
    else next.set(row, choice);
  }
  return next;
}

/** Rows of goods that are not known, and that nobody has said what to do with. */
export function unknownRows(rows: readonly ShownRow[]): readonly ShownRow[] {
  return rows.filter(({ left }) => left !== undefined && isUnknown(left));
}

/** What the import does to the book. */
export function importInput({ placed, map }: MatchedList, supplier: string) {
  const learned = learnedMap(map, placed.taken);
  return { supplier, rows: placed.taken.map(takenRow), ...(learned && { map: learned }) };
}

/** Takes the rows as one edit of the book; the list stays, each of its prices in the book by then. */
export function importList(state: ListState): void {
  const { api, supplier } = state;
  const read = state.read(contextNow(api));
  if (!read?.ok) return;
  const news = read.value.placed.taken.filter(({ isThere }) => !isThere).length;
  const refused = api.doAct('takePriceList', importInput(read.value, supplier.value), () =>
    api.say(`${news === 1 ? '1 price is' : `${news} prices are`} in the book; undo takes them out again.`),
  );
  if (refused !== undefined) api.refuse(refused);
}
