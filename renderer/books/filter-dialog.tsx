import { useState } from 'preact/hooks';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { Dialog, DialogScroll } from '#renderer/kit/dialog.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import type { TableView } from '#shared-calc/records/records.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookColumn } from './book-table.ts';

type Filter = TableView['filters'][number];

interface FilterParts<Row> {
  readonly column: BookColumn<Row>;
  /** All rows of the table, hidden ones too. */
  readonly rows: readonly Row[];
  readonly now: Filter | undefined;
  readonly take: (filter: Filter) => void;
  readonly close: () => void;
}

/** Asks which rows are to be shown: by bounds of a figure, by some of its words, by words that stand in it. */
export function FilterDialog<Row>(parts: FilterParts<Row>) {
  const { column, close } = parts;
  return (
    <Dialog title={`${actNames.filter} by ${column.title.toLowerCase()}`} close={close}>
      {(leave) => <FilterForm {...parts} leave={leave} />}
    </Dialog>
  );
}

function FilterForm<Row>(parts: FilterParts<Row> & { readonly leave: () => void }) {
  const { column, now, take, leave } = parts;
  const form = useFilter(parts);
  const settle = () => {
    const filter = form.read();
    if (!filter) return;
    take(filter);
    leave();
  };
  const without = () => {
    take({ column: column.key });
    leave();
  };
  return (
    <>
      {column.bound ? (
        <Bounds unit={column.unit} least={form.least} most={form.most} enter={settle} />
      ) : (
        <TextField label="With these words in it" text={form.has} typing={form.setHas} enter={settle} />
      )}
      {form.words.length > 0 && (
        <DialogScroll label={`What stands in ${column.title.toLowerCase()}`}>
          {form.words.map((word) => (
            <Checkbox
              key={word}
              label={word === '' ? 'empty' : word}
              on={form.among.includes(word)}
              turn={(on) => form.turn(word, on)}
            />
          ))}
        </DialogScroll>
      )}
      <Buttons>
        <Button look="main" onClick={settle}>
          {actNames.filter}
        </Button>
        {now && <Button onClick={without}>Without this filter</Button>}
        <Button onClick={leave}>{actNames.cancel}</Button>
      </Buttons>
    </>
  );
}

interface BoundsParts {
  readonly unit: string;
  readonly least: Bound;
  readonly most: Bound;
  readonly enter: () => void;
}

function Bounds({ unit, least, most, enter }: BoundsParts) {
  const end = (label: string, { text, type, wrong }: Bound) => (
    <TextField label={label} unit={unit} figure text={text} typing={type} wrong={wrong} enter={enter} />
  );
  return (
    <Fields>
      {end('From', least)}
      {end('To', most)}
    </Fields>
  );
}

/** Above this many different words a list to tick helps nobody. */
const MOST_WORDS = 60;

function useFilter<Row>({ column, rows, now }: FilterParts<Row>) {
  const [has, setHas] = useState(now?.has ?? '');
  const [among, setAmong] = useState<readonly string[]>(now?.among ?? []);
  const least = useBound(column, now?.least);
  const most = useBound(column, now?.most);
  const words = column.bound ? [] : [...new Set(rows.map((row) => column.show(row)))].toSorted();
  const read = (): Filter | undefined => {
    const [low, high] = [least.read(), most.read()];
    if (!low || !high) return undefined;
    return {
      column: column.key,
      ...(has.trim() !== '' && { has: has.trim() }),
      ...(among.length > 0 && { among: [...among] }),
      ...(low.value !== undefined && { least: low.value }),
      ...(high.value !== undefined && { most: high.value }),
    };
  };
  const turn = (word: string, on: boolean) => setAmong(on ? [...among, word] : among.filter((each) => each !== word));
  return { has, setHas, among, turn, least, most, words: words.length > MOST_WORDS ? [] : words, read };
}

type Bound = ReturnType<typeof useBound>;

/** A bound being typed. What stood there before counts until something is typed over it. */
function useBound<Row>({ bound }: BookColumn<Row>, before: number | undefined) {
  const [text, setText] = useState<string>();
  const [wrong, setWrong] = useState<string>();
  const read = (): { readonly value: number | undefined } | undefined => {
    if (text === undefined || !bound) return { value: before };
    if (text.trim() === '') return { value: undefined };
    const figure = bound(text);
    if (figure.ok) return { value: figure.value };
    setWrong(figure.fault);
    return undefined;
  };
  const type = (next: string) => {
    setWrong(undefined);
    setText(next);
  };
  return { text: text ?? (before === undefined ? '' : String(before)), type, wrong, read };
}
