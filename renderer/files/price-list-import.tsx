import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { contextNow, type BookApi, type BookContext } from '#renderer/books/book-api.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Dialog } from '#renderer/kit/dialog.tsx';
import { ChoiceField, Fields, TextField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import type { RowChoice } from '#shared-calc/acts/place-list-rows.ts';
import type { ListFault, PriceList } from '#shared-calc/acts/price-list.ts';
import { learnedMap, takenRow } from '#shared-calc/acts/take-price-list.ts';
import { listColumns, type ListColumn, type PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import type { Result } from '#shared-calc/result.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { columnWords, sayListFault } from '#shared-calc/words/say-list-fault.ts';
import { pickText, readTextFile, type PickedText } from './pick-text.ts';
import { readMatching, sayTaken, type MatchedList, type Matching } from './price-list-reading.ts';
import { PriceListRows } from './price-list-rows.tsx';
import css from './price-list.module.css';

export interface PriceListImport {
  readonly open: () => void;
  readonly dialog: () => ComponentChildren;
}

/** Imports a supplier's own price list: columns and articles are matched once, and each row has its act. */
export function priceListImport(api: BookApi): PriceListImport {
  const matching = signal<Matching | undefined>(undefined);
  const set = (next: Partial<Matching>) => {
    if (matching.value) matching.value = { ...matching.value, ...next };
  };
  const open = () => {
    const [supplier = ''] = api.records.peek().supplier.keys();
    matching.value = { name: '', text: '', supplier, map: {}, choices: new Map() };
  };
  const close = () => (matching.value = undefined);
  return {
    open,
    dialog: () => matching.value && <ImportDialog matching={matching.value} set={set} api={api} close={close} />,
  };
}

interface DialogParts {
  readonly matching: Matching;
  readonly set: (next: Partial<Matching>) => void;
  readonly api: BookApi;
}

function ImportDialog({ matching, set, api, close }: DialogParts & { readonly close: () => void }) {
  const context = contextNow(api);
  const take = ({ name, text }: PickedText) => set({ name, text, choices: new Map() });
  const read = matching.text === '' ? undefined : readMatching(matching, context);
  const rows = read?.ok ? read.value.placed.taken : [];
  const mayTake = rows.some(({ isThere }) => !isThere);
  const doTake = (leave: () => void) => {
    if (!read?.ok) return;
    const map = learnedMap(read.value.map, rows);
    api.doAct('takePriceList', { supplier: matching.supplier, rows: rows.map(takenRow), ...(map && { map }) }, leave);
  };
  return (
    <Dialog title="Import a price list" wide close={close}>
      {(leave) => (
        <>
          <Suppliers matching={matching} set={set} context={context} />
          <Source matching={matching} take={take} refuse={api.refuse} />
          {read && <Columns matching={matching} set={set} read={read} context={context} />}
          {read && <p role="status">{read.ok ? sayTaken(read.value.placed) : sayListFault(read.fault)}</p>}
          {read?.ok && (
            <PriceListRows
              matched={read.value}
              choices={matching.choices}
              choose={(row, choice) => set({ choices: withChoice(matching.choices, row, choice) })}
              context={context}
            />
          )}
          <Buttons>
            <Button onClick={leave}>{actNames.cancel}</Button>
            <Button look={mayTake ? 'framed' : 'main'} onClick={() => pickText(document, take, api.refuse)}>
              {matching.text === '' ? 'Choose a file' : 'Choose another file'}
            </Button>
            {read && (
              <Button look="main" disabled={!mayTake} onClick={() => doTake(leave)}>
                Import
              </Button>
            )}
          </Buttons>
        </>
      )}
    </Dialog>
  );
}

function withChoice(choices: Matching['choices'], row: number, choice: RowChoice | undefined): Matching['choices'] {
  const next = new Map(choices);
  if (choice) next.set(row, choice);
  else next.delete(row);
  return next;
}

interface Sections {
  readonly matching: Matching;
  readonly set: DialogParts['set'];
  readonly context: BookContext;
}

function Suppliers({ matching, set, context }: Sections) {
  const suppliers = [...context.records.supplier.values()];
  if (suppliers.length === 0) return <p>There is no supplier yet. Add one in the rate book first.</p>;
  return (
    <Fields look="short">
      <PickOne
        label="Whose list it is"
        value={matching.supplier}
        options={suppliers.map(({ id, name }) => ({ value: id, label: name || id }))}
        choose={(supplier) => set({ supplier, map: {}, choices: new Map() })}
      />
    </Fields>
  );
}

interface SourceParts {
  readonly matching: Matching;
  readonly take: (picked: PickedText) => void;
  readonly refuse: (sentence: string) => void;
}

/** Where a file is dropped, or a table of another program is pasted. */
function Source({ matching: { name }, take, refuse }: SourceParts) {
  const drop = (event: DragEvent) => {
    const [file] = event.dataTransfer?.files ?? [];
    if (!file) return;
    event.preventDefault();
    event.stopPropagation();
    void readTextFile(file).then((read) => (read.ok ? take(read.value) : refuse(read.fault)));
  };
  const paste = (event: ClipboardEvent) => {
    const html = event.clipboardData?.getData('text/html') ?? '';
    const text = /<tr[\s>]/i.test(html)
      ? html.replace(/^.*?(?=<table)/is, '')
      : event.clipboardData?.getData('text/plain');
    event.preventDefault();
    if (text !== undefined && text.trim() !== '') take({ name: 'pasted table', text });
  };
  return (
    <div class={css['drop']} tabIndex={0} role="group" aria-label="Drop or paste a list" onDrop={drop} onPaste={paste}>
      {name === '' ? 'Choose a file, drop it here, or paste a table here.' : <b>{name}</b>}
    </div>
  );
}

interface ColumnsParts extends Sections {
  readonly read: Result<MatchedList, ListFault>;
}

/** Which column is which, and how the list writes days and numbers. */
function Columns({ matching: { map }, set, read, context }: ColumnsParts) {
  const headings = read.ok ? read.value.list.headings : 'headings' in read.fault ? read.fault.headings : [];
  if (headings.length === 0) return null;
  const list = read.ok ? read.value.list : undefined;
  const options = [{ value: '', label: 'not in the list' }, ...named(headings)];
  const put = (next: Partial<PriceListMap>) => set({ map: { ...map, ...next } });
  return (
    <Fields>
      {listColumns.map((column) => (
        <ChoiceField
          key={column}
          label={`The ${columnWords[column]}`}
          value={headingOf(column, list, map)}
          options={options}
          choose={(heading) => set({ map: withColumn(map, column, heading) })}
        />
      ))}
      <Days map={map} put={put} />
      <Decimals map={map} put={put} />
      {list?.columns.from === undefined && <FromDay map={map} put={put} context={context} />}
    </Fields>
  );
}

function named(headings: readonly string[]) {
  return [...new Set(headings)].filter((heading) => heading !== '').map((value) => ({ value, label: value }));
}

function headingOf(column: ListColumn, list: PriceList | undefined, map: PriceListMap): string {
  const at = list?.columns[column];
  return (at === undefined ? undefined : list?.headings[at]) ?? map.columns?.[column] ?? '';
}

function withColumn(map: PriceListMap, column: ListColumn, heading: string): PriceListMap {
  const { [column]: _, ...columns } = map.columns ?? {};
  return { ...map, columns: heading === '' ? columns : { ...columns, [column]: heading } };
}

interface SaidParts {
  readonly map: PriceListMap;
  readonly put: (next: Partial<PriceListMap>) => void;
}

const dayOrders = [
  { value: '', label: 'as the list shows' },
  { value: 'ymd', label: 'year first' },
  { value: 'dmy', label: 'day first' },
  { value: 'mdy', label: 'month first' },
];

function Days({ map, put }: SaidParts) {
  const choose = (value: string) => {
    const dates = (['ymd', 'dmy', 'mdy'] as const).find((each) => each === value);
    put({ dates });
  };
  return <ChoiceField label="Days are written" value={map.dates ?? ''} options={dayOrders} choose={choose} />;
}

const signs = [
  { value: '', label: 'as the list shows' },
  { value: '.', label: 'point' },
  { value: ',', label: 'comma' },
];

function Decimals({ map, put }: SaidParts) {
  const choose = (value: string) => put({ decimal: value === '.' || value === ',' ? value : undefined });
  return <ChoiceField label="Decimal sign" value={map.decimal ?? ''} options={signs} choose={choose} />;
}

function FromDay({ map, put, context }: SaidParts & Pick<Sections, 'context'>) {
  const type = (text: string) => {
    const day = readDay(text, 'From', context);
    if (day.ok) put({ from: day.value });
  };
  return <TextField label="Prices hold from" text={map.from ?? context.today} typing={type} />;
}
