import { useMemo, useState } from 'preact/hooks';
import type { BookApi, BookContext } from '#renderer/books/book-api.ts';
import type { RecordRow } from '#renderer/books/record-table.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { Fault, Hint } from '#renderer/kit/note.tsx';
import { PanelHead } from '#renderer/kit/side-panel.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { riseChange, risenPrices, type PriceRise, type RisenPrice } from '#shared-calc/acts/price-rise.ts';
import { sayPack } from '#shared-calc/buy/pack-said.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { goodsLabel, unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { touchesOn, type PriceTouch } from '#shared-calc/derive/price-touch.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

interface PanelParts {
  readonly row: RecordRow<'supplier'>;
  readonly context: BookContext;
  readonly api: BookApi;
}

/** A supplier, and a rise of all its prices, tried before it is written. */
export function SupplierPanel({ row: { id, record }, context, api }: PanelParts) {
  return (
    <>
      <PanelHead where="Rate book, supplier" title={`${id} ${record.name}`.trim()} />
      <section>
        <h3>Raise its prices</h3>
        <Rise key={id} supplier={id} context={context} api={api} />
      </section>
    </>
  );
}

interface RiseParts extends Omit<PanelParts, 'row'> {
  readonly supplier: string;
}

function Rise({ supplier, context, api }: RiseParts) {
  const [by, setBy] = useState('');
  const [from, setFrom] = useState(writeDay(context.today, context.display.dateOrder));
  const [codes, setCodes] = useState('');
  const share = said(
    readMeasure(
      by,
      { name: 'Rise', stored: 'share', shown: '%', low: -0.9, high: 10, mayBeEmpty: true },
      context.display,
    ),
  );
  const day = said(readDay(from, 'From', context));
  const asked = askedRise(supplier, { share, day, codes });
  const key = JSON.stringify(asked);
  const tried = useMemo(() => asked && tryRise(context, asked), [context, key]);
  const write = () => {
    if (!asked || !tried?.ok) return;
    const refused = api.doAct('raisePrices', asked);
    if (refused === undefined) setBy('');
  };
  return (
    <>
      <Fields>
        <TextField label="By" unit="%" figure text={by} typing={setBy} enter={write} wrong={faultOf(share)} />
        <TextField label="from" text={from} typing={setFrom} enter={write} wrong={faultOf(day)} days={context} />
        <TextField
          label="Only these goods"
          hint="codes, as M01, M04; empty for everything it sells"
          text={codes}
          typing={setCodes}
          enter={write}
        />
      </Fields>
      {tried?.ok === false && <Fault>{tried.fault}</Fault>}
      {tried?.ok === true && <Tried tried={tried.value} context={context} />}
      <Buttons>
        <Button disabled={tried?.ok !== true} onClick={write}>
          {tried?.ok === true ? `Raise ${counted(tried.value.risen.length, 'price')}` : 'Raise the prices'}
        </Button>
      </Buttons>
    </>
  );
}

type DatedRise = PriceRise & { readonly from: Day };

function askedRise(
  supplier: string,
  typed: {
    readonly share: Result<number | undefined, string>;
    readonly day: Result<Day, string>;
    readonly codes: string;
  },
): DatedRise | undefined {
  const { share, day } = typed;
  if (!share.ok || share.value === undefined || !day.ok) return undefined;
  const materials = typed.codes.split(/[,;\s]+/).filter((code) => code !== '');
  return { supplier, share: share.value, from: day.value, ...(materials.length > 0 && { materials }) };
}

interface TriedRise {
  readonly risen: readonly RisenPrice[];
  readonly touches: readonly PriceTouch[];
}

function tryRise(context: BookContext, asked: DatedRise): Result<TriedRise, string> {
  const { records } = context;
  const risen = risenPrices(records, asked);
  if (!risen.ok) return failed(sayActFault(risen.fault));
  const after = context.update(applyChange(records, riseChange(records, risen.value, asked)));
  return ok({ risen: risen.value, touches: touchesOn(after, asked.from).touches });
}

function Tried({ tried, context }: { readonly tried: TriedRise; readonly context: BookContext }) {
  const { workshop, records, display } = context;
  const money = (coins: number) => showCoins(coins, workshop);
  const { risen, touches } = tried;
  return (
    <>
      <Table
        caption={`Open quotes that it touches, ${workshop.currency}`}
        rows={touches}
        keyOf={({ quote }) => quote}
        columns={[
          { head: 'Quote', names: true, cell: ({ job, quote }) => `${job} ${quote}` },
          { head: 'Cost more', figure: true, cell: ({ cost }) => money(cost.to - cost.from) },
          { head: 'Left of the price', figure: true, cell: ({ margin }) => money(margin.to) },
          { head: 'Below our margin by', figure: true, cell: ({ net }) => money(net.to - net.from) },
        ]}
        empty="No open quote is touched."
      />
      <Table
        caption={`Prices that rise, ${workshop.currency}`}
        rows={risen}
        keyOf={({ pack }) => pack.id}
        columns={[
          {
            head: 'Pack',
            names: true,
            cell: ({ pack }) =>
              `${pack.material} ${goodsLabel(pack.material, records)}, ${sayPack(pack, unitOfGoods(pack.material, records) ?? 'each', display)}`,
          },
          { head: 'Before', figure: true, cell: ({ before }) => money(before.priceCoins) },
          { head: 'Then', figure: true, cell: ({ coins }) => money(coins) },
        ]}
      />
      <Hint>Issued quotes stay as they are; every price of an earlier day stays, too.</Hint>
    </>
  );
}

function counted(count: number, one: string): string {
  return count === 1 ? `1 ${one}` : `${count} ${one}s`;
}

function faultOf(read: Result<unknown, string>): string | undefined {
  return read.ok ? undefined : read.fault;
}
