import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { ChoiceField } from '#renderer/kit/field.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import { Table, type Column } from '#renderer/kit/table.tsx';
import type { PlacedRow, RowChoice } from '#shared-calc/acts/place-list-rows.ts';
import type { ListRow } from '#shared-calc/acts/price-list.ts';
import { suggestGoods, type NamedGoods } from '#shared-calc/acts/suggest-goods.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { sayListRowFault } from '#shared-calc/words/say-list-fault.ts';
import type { MatchedList } from './price-list-reading.ts';
import css from './price-list.module.css';

interface RowsParts {
  readonly matched: MatchedList;
  readonly choices: ReadonlyMap<number, RowChoice>;
  readonly choose: (row: number, choice: RowChoice | undefined) => void;
  readonly context: BookContext;
}

interface ShownRow {
  readonly row: ListRow;
  readonly placed: PlacedRow | undefined;
  readonly why: string;
  readonly choice: RowChoice | undefined;
}

/** Rows that are drawn at once: each has fields of its own. */
const STEP = 50;
const showns = [
  { value: 'all', label: 'all rows' },
  { value: 'taken', label: 'rows that are taken' },
  { value: 'left', label: 'rows that are left' },
] as const;

/** The rows of a list, each with what it is and what is done with it. */
export function PriceListRows({ matched, choices, choose, context }: RowsParts) {
  const [show, setShow] = useState<string>('all');
  const [from, setFrom] = useState(0);
  const all = shownRows(matched, choices).filter(
    ({ placed }) => show === 'all' || (show === 'taken') === (placed !== undefined),
  );
  const rows = all.slice(from, from + STEP);
  const goods = goodsOf(context);
  const go = (at: number) => setFrom(Math.max(0, at));
  return (
    <>
      <ChoiceField
        label="Show"
        value={show}
        options={showns}
        choose={(next) => {
          setShow(next);
          setFrom(0);
        }}
      />
      <datalist id="list-goods">
        {goods.map(({ id, label }) => (
          <option key={id} value={`${id} ${label}`} />
        ))}
      </datalist>
      <DialogScroll label="Rows of the list">
        <Table
          label="Rows of the list"
          rows={rows}
          keyOf={({ row }) => row.row}
          columns={columnsOf({ context, goods, choose })}
          empty="No such rows."
        />
      </DialogScroll>
      {all.length > STEP && (
        <Buttons>
          <Button disabled={from === 0} onClick={() => go(from - STEP)}>
            Rows before
          </Button>
          <Muted>{`${from + 1} to ${Math.min(from + STEP, all.length)} of ${all.length}`}</Muted>
          <Button disabled={from + STEP >= all.length} onClick={() => go(from + STEP)}>
            Rows after
          </Button>
        </Buttons>
      )}
    </>
  );
}

function shownRows({ list, placed }: MatchedList, choices: RowsParts['choices']): readonly ShownRow[] {
  const taken = new Map(placed.taken.map((each) => [each.row, each]));
  const left = new Map(placed.left.map((each) => [each.row, sayListRowFault(each.fault)]));
  return list.rows.map((row) => ({
    row,
    placed: taken.get(row.row),
    why: left.get(row.row) ?? '',
    choice: choices.get(row.row),
  }));
}

function goodsOf({ records: { material, tank, plant } }: BookContext): readonly NamedGoods[] {
  return [...material.values(), ...tank.values(), ...[...plant.values()].map(({ id, name }) => ({ id, label: name }))];
}

interface CellParts {
  readonly context: BookContext;
  readonly goods: readonly NamedGoods[];
  readonly choose: RowsParts['choose'];
}

function columnsOf({ context, goods, choose }: CellParts): readonly Column<ShownRow>[] {
  const { workshop } = context;
  return [
    { head: 'row', figure: true, cell: ({ row }) => row.row },
    { head: 'article', names: true, cell: ({ row }) => row.article || row.material },
    { head: 'its words', cell: ({ row }) => row.label },
    { head: 'pack', cell: ({ row, placed }) => (placed ? packWords(placed) : row.written.pack) },
    { head: 'before', figure: true, cell: ({ placed }) => showCoins(placed?.beforeCoins, workshop) },
    {
      head: `price, ${workshop.currency}`,
      figure: true,
      cell: ({ row, placed }) => (placed ? showCoins(placed.priceCoins, workshop) : row.written.price),
    },
    { head: 'change', figure: true, cell: ({ placed }) => sayChange(placed) },
    {
      head: 'from',
      cell: ({ row, placed }) => (placed ? writeDay(placed.from, workshop.dateOrder) : row.written.from),
    },
    { head: 'is our', cell: (shown) => <IsOur shown={shown} goods={goods} choose={choose} /> },
    { head: 'act', cell: (shown) => <RowAct shown={shown} choose={choose} /> },
  ];
}

function packWords({ pack }: PlacedRow): string {
  return `${pack.amount} ${unitWords(pack.unit, '')}`;
}

/** `+4.1 %` */
function sayChange(placed: PlacedRow | undefined): string {
  const before = placed?.beforeCoins;
  if (!placed || before === undefined || before === 0) return '';
  const percent = ((placed.priceCoins - before) / before) * 100;
  return percent === 0 ? 'no change' : `${percent > 0 ? '+' : '−'}${Math.abs(percent).toFixed(1)} %`;
}

interface RowParts {
  readonly shown: ShownRow;
  readonly choose: RowsParts['choose'];
}

function IsOur({ shown, goods, choose }: RowParts & Pick<CellParts, 'goods'>) {
  const { row, choice } = shown;
  if (choice?.act === 'new material') return <Muted>new</Muted>;
  const material = materialOf(shown);
  const label = goods.find(({ id }) => id === material)?.label ?? '';
  const isOpen = material === '' && choice === undefined;
  const suggested = isOpen ? suggestGoods(row.label, goods) : undefined;
  const take = (text: string) => {
    const code = text.trim().split(' ')[0] ?? '';
    const found = goods.find(({ id, label: words }) => id === code || words === text.trim());
    choose(row.row, found && { act: 'take', material: found.id });
  };
  return (
    <>
      <input
        class={css['our']}
        list="list-goods"
        aria-label={`Row ${row.row} is our`}
        value={`${material} ${label}`.trim()}
        autocomplete="off"
        spellcheck={false}
        onChange={(event) => take(event.currentTarget.value)}
      />
      {suggested && (
        <Button look="plain" onClick={() => choose(row.row, { act: 'take', material: suggested.id })}>
          {`Is it ${suggested.id} ${suggested.label}?`}
        </Button>
      )}
    </>
  );
}

function materialOf({ placed, choice }: ShownRow): string {
  return placed?.material ?? (choice?.act === 'take' ? choice.material : '');
}

function RowAct({ shown: { row, placed, why, choice }, choose }: RowParts) {
  const taken = placed && placed.material !== undefined ? sayTake(placed) : 'take';
  const options = [
    { value: 'take', label: taken },
    { value: 'new material', label: 'new material' },
    { value: 'leave', label: 'leave out' },
  ];
  const act = (value: string) => {
    if (value === 'leave') choose(row.row, { act: 'leave' });
    else choose(row.row, value === 'take' ? undefined : { act: 'new material', label: row.label });
  };
  return (
    <>
      <ChoiceField
        quiet
        label={`Act of row ${row.row}`}
        value={choice?.act ?? (placed ? 'take' : 'leave')}
        options={options}
        choose={act}
      />
      {why !== '' && choice?.act !== 'leave' && <Muted>{why}</Muted>}
    </>
  );
}

function sayTake({ known, isThere }: PlacedRow): string {
  if (!known) return 'new pack';
  return isThere ? 'in the book already' : 'price';
}
