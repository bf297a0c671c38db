import { useState } from 'preact/hooks';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { AskedAgainst } from '#renderer/kit/against.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { Flag, FlagRows } from '#renderer/kit/flag.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { againstAct } from '#renderer/store/against-act.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { Reason } from '#shared-calc/acts/reason.ts';
import { lastDue } from '#shared-calc/buy/order-standing.ts';
import type { OrderDraft } from '#shared-calc/derive/placement.ts';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { leftOutOf, sayLeftOut } from '#shared-calc/words/say-left-out.ts';
import type { ShownRun } from './shown-run.ts';
import css from './run.module.css';

interface DialogParts {
  readonly shown: ShownRun;
  readonly api: JobApi;
  readonly close: () => void;
}

/** Places the orders of a run: with which suppliers, and what is left out, by name, before anything is ordered. */
export function PlaceDialog({ shown, api, close }: DialogParts) {
  const { placement, jobs, context } = shown;
  const [off, setOff] = useState<ReadonlySet<string>>(new Set());
  const [reason, setReason] = useState<Reason>({});
  const [wrong, setWrong] = useState<string>();
  const suppliers = placement.drafts.map(({ supplier }) => supplier.id).filter((id) => !off.has(id));
  const input = { jobs: [...jobs], suppliers, note: '' };
  const against = suppliers.length === 0 ? [] : againstAct(context, 'placeOrders', input);
  const place = () => {
    const refused = api.doAct('placeOrders', { ...input, ...reason });
    setWrong(refused);
    if (refused !== undefined) return false;
    api.say(`Ordered for ${jobs.join(', ')}. What comes in is taken in there.`);
    location.hash = writeRoute('orders');
    return true;
  };
  return (
    <AskDialog
      title={`Place orders for ${jobs.join(', ')}`}
      does={suppliers.length === 1 ? 'Place 1 order' : `Place ${suppliers.length} orders`}
      disabled={suppliers.length === 0}
      run={place}
      wrong={wrong}
      close={close}
    >
      {(enter) => (
        <DialogScroll label="What is ordered and what is left out">
          <Suppliers shown={shown} off={off} change={setOff} />
          <LeftOut shown={shown} suppliers={suppliers} />
          <AskedAgainst
            {...{ against, reason, enter }}
            display={context.display}
            records={context.records}
            change={setReason}
            hint="It may go on without them. A reason and who decides are kept with the job and printed on its build card."
          />
          <Hint>What the store gives is kept for these jobs. An order is not undone: it is closed.</Hint>
        </DialogScroll>
      )}
    </AskDialog>
  );
}

interface SuppliersParts {
  readonly shown: ShownRun;
  /** Suppliers that nothing is ordered from now. */
  readonly off: ReadonlySet<string>;
  readonly change: (off: ReadonlySet<string>) => void;
}

function Suppliers({ shown, off, change }: SuppliersParts) {
  const turn = (id: string, on: boolean) => {
    const next = new Set(off);
    if (on) next.delete(id);
    else next.add(id);
    change(next);
  };
  return (
    <fieldset class={css['runJobs']}>
      <legend>Order from</legend>
      {shown.placement.drafts.map((draft) => (
        <Checkbox
          key={draft.supplier.id}
          label={<Draft draft={draft} shown={shown} />}
          on={!off.has(draft.supplier.id)}
          turn={(on) => turn(draft.supplier.id, on)}
        />
      ))}
    </fieldset>
  );
}

function Draft({ draft, shown: { context } }: { readonly draft: OrderDraft; readonly shown: ShownRun }) {
  const { supplier, goodsCoins, carriageCoins, lines } = draft;
  const money = (coins: number) => `${showCoins(coins, context.workshop)}\u00a0${context.workshop.currency}`;
  const short = (supplier.minimumCoins ?? 0) - goodsCoins;
  return (
    <span class={css['runJob']}>
      <b>{supplier.name}</b> {money(goodsCoins + carriageCoins)}
      <Muted>
        {lines.length === 1 ? '1 line' : `${lines.length} lines`}, here on{' '}
        {paperWeekday(lastDue(lines), context.display)}
      </Muted>
      {short > 0 && (
        <Flag state="watch" sign="watch">
          {money(short)} short of the least order
        </Flag>
      )}
    </span>
  );
}

interface LeftParts {
  readonly shown: ShownRun;
  readonly suppliers: readonly string[];
}

function LeftOut({ shown: { placement, context }, suppliers }: LeftParts) {
  const says = sayLeftOut(leftOutOf(placement, suppliers), context);
  if (says.length === 0) return null;
  return (
    <>
      <h3>Left out, and to mind</h3>
      <FlagRows label="Left out, and to mind">
        {says.map((sentence) => (
          <li key={sentence}>
            <Flag state="watch" sign="watch">
              mind
            </Flag>
            <span>{sentence}</span>
          </li>
        ))}
      </FlagRows>
    </>
  );
}
