import { actNames } from '#shared-calc/words/act-names.ts';
import { useState } from 'preact/hooks';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { isPlantGoods, QUARANTINE_DAYS } from '#shared-calc/buy/ledger.ts';
import type { LineStanding, OrderStanding } from '#shared-calc/buy/order-standing.ts';
import { orderedCautions } from '#shared-calc/prepare/ordered-cautions.ts';
import { sayLine } from '#shared-calc/papers/supplier-orders.ts';
import { entryOfCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { readDelivery, type TypedDelivery, type TypedLine } from './read-delivery.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import css from './orders.module.css';

interface DialogParts {
  readonly standing: OrderStanding;
  readonly api: JobApi;
  readonly close: () => void;
}

/** Takes in what came of an order: packs and price paid of each line, its days, and a note where more came. */
export function ReceiveDialog({ standing, api, close }: DialogParts) {
  const context = contextNow(api);
  const { order } = standing;
  const lines = standing.lines.filter(({ open }) => open > 0 || order.closedOn !== undefined);
  const [typed, setTyped] = useState(() => freshDelivery(lines, context));
  const [wrong, setWrong] = useState<string>();
  const take = () => {
    const read = readDelivery(typed, context);
    const refused = read.ok ? api.doAct('receiveOrder', { order: order.id, ...read.value }) : read.fault;
    setWrong(refused);
    return refused === undefined;
  };
  const change = (some: Partial<TypedDelivery>) => setTyped({ ...typed, ...some });
  const hasPlants = lines.some(({ line }) => isPlantGoods(context.records, line.of));
  return (
    <AskDialog title={`${order.id}: receive what came`} does={actNames.receive} run={take} wrong={wrong} close={close}>
      {(enter) => (
        <>
          <DialogScroll class={css['receipt']} label="Lines of the order">
            {lines.map((each, at) => (
              <LineEntry
                key={each.line.n}
                standing={each}
                typed={typed.lines[at]}
                change={(line) => change({ lines: typed.lines.with(at, line) })}
                context={context}
                enter={enter}
              />
            ))}
          </DialogScroll>
          <DeliveryFields context={context} typed={typed} hasPlants={hasPlants} change={change} enter={enter} />
          <Hint>What was ordered for a job is kept for it.</Hint>
          <CautionList cautions={orderedCautions(context.records, [order])} display={context.display} />
        </>
      )}
    </AskDialog>
  );
}

interface DeliveryParts {
  readonly typed: TypedDelivery;
  readonly hasPlants: boolean;
  readonly change: (some: Partial<TypedDelivery>) => void;
  readonly enter: () => void;
  readonly context: BookContext;
}

/** What holds for all that came. */
function DeliveryFields({ typed, hasPlants, change, enter, context }: DeliveryParts) {
  const apart = `plants stand apart for ${QUARANTINE_DAYS} days unless a day is given`;
  return (
    <Fields>
      <TextField label="Came on" text={typed.on} typing={(on) => change({ on })} enter={enter} days={context} />
      <TextField
        label="Best before"
        hint="empty: none"
        text={typed.bestBefore}
        typing={(bestBefore) => change({ bestBefore })}
        enter={enter}
        days={context}
      />
      <TextField
        label="In quarantine until"
        hint={hasPlants ? apart : 'empty: none'}
        text={typed.until}
        typing={(until) => change({ until })}
        enter={enter}
        days={context}
      />
      <TextField
        label="Note"
        hint="wanted where more came than was ordered"
        text={typed.note}
        typing={(note) => change({ note })}
        enter={enter}
      />
    </Fields>
  );
}

function freshDelivery(lines: readonly LineStanding[], { workshop, today, display }: BookContext): TypedDelivery {
  return {
    lines: lines.map(({ line, open }) => ({
      n: line.n,
      count: writeNumber(open, Number.isInteger(open) ? 0 : 2, { ...workshop, group: false }),
      paid: entryOfCoins(line.askedCoins, workshop),
    })),
    on: writeDay(today, display.dateOrder),
    bestBefore: '',
    until: '',
    note: '',
  };
}

interface LineParts {
  readonly standing: LineStanding;
  readonly typed: TypedLine | undefined;
  readonly change: (line: TypedLine) => void;
  readonly context: BookContext;
  readonly enter: () => void;
}

function LineEntry({ standing: { line, open }, typed, change, context, enter }: LineParts) {
  const { n, count = '', paid = '' } = typed ?? { n: line.n };
  return (
    <fieldset class={css['line']}>
      <legend>
        {line.label}, {sayLine(line, context.workshop)}
      </legend>
      <TextField
        label="Packs that came"
        of={line.label}
        hint={`${writeNumber(open, Number.isInteger(open) ? 0 : 2, context.display)} to come`}
        figure
        text={count}
        typing={(text) => change({ n, count: text, paid })}
        enter={enter}
      />
      <TextField
        label="Paid each"
        of={line.label}
        unit={context.workshop.currency}
        figure
        text={paid}
        typing={(text) => change({ n, count, paid: text })}
        enter={enter}
      />
    </fieldset>
  );
}
