import { ChoiceField, Fields, TextField } from '#renderer/kit/field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import type { BookContext } from '#renderer/books/book-api.ts';
import { columnAt } from '#shared-calc/acts/price-list-columns.ts';
import type { ListFault } from '#shared-calc/acts/price-list.ts';
import { listColumns, type ListColumn, type PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import type { Result } from '#shared-calc/result.ts';
import { columnWords } from '#shared-calc/words/say-list-fault.ts';
import type { ListState } from './list-state.ts';
import type { MatchedList, Matching } from './read-matching.ts';
import { useEffect, useState } from 'preact/hooks';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import css from './price-lists.module.css';

interface ColumnsParts {
  readonly state: ListState;
  readonly matching: Matching;
  readonly read: Result<MatchedList, ListFault>;
  readonly context: BookContext;
}

/** Which column is which, and how the list writes days and numbers; unfolded while the list cannot be read. */
export function ColumnsPart({ state, matching, read, context }: ColumnsParts) {
  const [isOpen, turn] = useState(!read.ok || matching.isGuessed);
  useEffect(() => {
    if (!read.ok) turn(true);
  }, [read.ok]);
  const headings = read.ok ? read.value.list.headings : 'headings' in read.fault ? read.fault.headings : [];
  if (headings.length === 0) return null;
  const { map, isGuessed } = matching;
  const put = (next: Partial<PriceListMap>) => state.set({ map: { ...map, ...next }, isGuessed: false });
  return (
    <details class={css['columns']} open={isOpen} onToggle={(event) => turn(event.currentTarget.open)}>
      <summary>Columns: {sayColumns(read, map)}</summary>
      {isGuessed && <Hint>Found by what stands in them. Look at each; they are remembered with the import.</Hint>}
      <Fields>
        {listColumns.map((column) => (
          <ChoiceField
            key={column}
            label={titled(columnWords[column])}
            value={chosenColumn(column, read, map)}
            options={options(headings)}
            choose={(heading) => put({ columns: withColumn(map, column, heading) })}
          />
        ))}
        <ChoiceField
          label="Days are written"
          value={map.dates ?? ''}
          options={dayOrders}
          choose={(dates) => put(dialect({ dates }))}
        />
        <ChoiceField
          label="Decimal sign"
          value={map.decimal ?? ''}
          options={signs}
          choose={(decimal) => put(dialect({ decimal }))}
        />
        {read.ok && read.value.list.columns.from === undefined && <FromDay map={map} put={put} context={context} />}
      </Fields>
    </details>
  );
}

function titled(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** `article Item No., price Price (USD)` */
function sayColumns(read: ColumnsParts['read'], map: PriceListMap): string {
  const found = listColumns.flatMap((column) => {
    const heading = chosenColumn(column, read, map);
    return heading === '' ? [] : [`${columnWords[column]} “${heading}”`];
  });
  return found.length === 0 ? 'not known yet' : found.join(', ');
}

function options(headings: readonly string[]) {
  const alone = new Set(headings.filter((heading) => headings.filter((each) => each === heading).length === 1));
  const named = headings.map((heading, at) =>
    alone.has(heading) && heading !== ''
      ? { value: heading, label: heading }
      : { value: columnAt(at), label: `${columnAt(at)} ${heading}`.trim() },
  );
  return [{ value: '', label: 'not in the list' }, ...named];
}

function chosenColumn(column: ListColumn, read: ColumnsParts['read'], map: PriceListMap): string {
  const at = read.ok ? read.value.list.columns[column] : undefined;
  return map.columns?.[column] ?? (at === undefined || !read.ok ? '' : (read.value.list.headings[at] ?? ''));
}

function withColumn(map: PriceListMap, column: ListColumn, heading: string): NonNullable<PriceListMap['columns']> {
  const { [column]: _, ...columns } = map.columns ?? {};
  return heading === '' ? columns : { ...columns, [column]: heading };
}

const dayOrders = [
  { value: '', label: 'as the list shows' },
  { value: 'ymd', label: 'year first' },
  { value: 'dmy', label: 'day first' },
  { value: 'mdy', label: 'month first' },
] as const;

const signs = [
  { value: '', label: 'as the list shows' },
  { value: '.', label: 'point' },
  { value: ',', label: 'comma' },
] as const;

function dialect({ dates, decimal }: { readonly dates?: string; readonly decimal?: string }): Partial<PriceListMap> {
  if (dates !== undefined) return { dates: (['ymd', 'dmy', 'mdy'] as const).find((each) => each === dates) };
  return { decimal: (['.', ','] as const).find((each) => each === decimal) };
}

interface FromParts {
  readonly map: PriceListMap;
  readonly put: (next: Partial<PriceListMap>) => void;
  readonly context: BookContext;
}

function FromDay({ map, put, context }: FromParts) {
  const [text, setText] = useState(writeDay(map.from ?? context.today, context.display.dateOrder));
  const day = said(readDay(text, 'From', { ...context, nearest: true }));
  const type = (next: string) => {
    setText(next);
    const read = readDay(next, 'From', { ...context, nearest: true });
    if (read.ok) put({ from: read.value });
  };
  return (
    <TextField
      label="Prices hold from"
      text={text}
      typing={type}
      days={context}
      wrong={day.ok ? undefined : day.fault}
    />
  );
}
