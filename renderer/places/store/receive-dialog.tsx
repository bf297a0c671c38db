import { QUARANTINE_DAYS } from '#shared-calc/buy/ledger.ts';
import { useMemo, useState } from 'preact/hooks';
import { contextNow } from '#renderer/books/book-api.ts';
import { ChoiceField, TextField } from '#renderer/kit/field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Dialog, DialogScroll } from '#renderer/kit/dialog.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { expectedGoods, type ExpectedOrder } from '#shared-calc/derive/expected-goods.ts';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { goodsCautions } from '#shared-calc/prepare/order-cautions.ts';
import css from './store.module.css';

interface SheetParts {
  readonly api: JobApi;
  readonly close: () => void;
}

/** Receives an order: the packs that ordered jobs wait for, counted as delivered. */
export function ReceiveDialog({ api, close }: SheetParts) {
  const derived = contextNow(api);
  const orders = useMemo(() => expectedGoods(derived), [derived]);
  const [supplier, setSupplier] = useState<string>();
  const known = orders.ok ? orders.value : [];
  const order = known.find((each) => each.supplier === supplier) ?? known[0];
  return (
    <Dialog title="Receive an order" wide close={close}>
      {(leave) => (
        <>
          {!orders.ok && <Fault>{sayJobFault(orders.fault)}</Fault>}
          {orders.ok && !order && (
            <p>
              No job that is ordered waits for anything. Mark jobs as ordered on the shopping run, or put goods in by
              hand.
            </p>
          )}
          {order && (
            <>
              <ChoiceField
                label="Supplier"
                value={order.supplier}
                options={known.map(({ supplier: id, name }) => ({ value: id, label: name }))}
                choose={setSupplier}
              />
              <Counted key={order.supplier} order={order} api={api} done={leave} />
            </>
          )}
          {!order && (
            <Buttons>
              <Button look="main" onClick={leave}>
                Leave it
              </Button>
            </Buttons>
          )}
        </>
      )}
    </Dialog>
  );
}

interface CountedParts {
  readonly order: ExpectedOrder;
  readonly api: JobApi;
  readonly done: () => void;
}

function Counted({ order, api, done }: CountedParts) {
  const { display, records } = contextNow(api);
  const materials = new Set(order.packs.map(({ material }) => material));
  const [texts, setTexts] = useState(order.packs.map(({ count }) => String(count)));
  const [days, setDays] = useState(String(QUARANTINE_DAYS));
  const counts = texts.map(countOf);
  const quarantineDays = countOf(days);
  const hasPlants = order.packs.some(({ isPlant }) => isPlant);
  const isReadable = counts.every((count) => count !== undefined) && quarantineDays !== undefined;
  const take = () => {
    if (!isReadable) return;
    const packs = order.packs.map(({ material, amount }, at) => ({ material, amount, count: counts[at] ?? 0 }));
    api.doAct('receive', { supplier: order.supplier, packs, quarantineDays }, done);
  };
  return (
    <>
      <DialogScroll class={css['received']} label="Packs that came">
        {order.packs.map(({ material, label, unit, amount, count }, at) => (
          <CountEntry
            key={`${material} ${amount}`}
            label={`${material} ${label}, ${packWords(amount, unit, display)}`}
            hint={`${count} expected`}
            unit="packs"
            text={texts[at] ?? ''}
            typing={(text) => setTexts(texts.with(at, text))}
          />
        ))}
        {hasPlants && (
          <CountEntry label="Plants stand apart" hint="in quarantine" unit="days" text={days} typing={setDays} />
        )}
        <CautionList cautions={goodsCautions(records, materials)} />
      </DialogScroll>
      <Buttons>
        <Button onClick={done}>Leave it</Button>
        <Button look="main" disabled={!isReadable} onClick={take}>
          Put it into the Store
        </Button>
      </Buttons>
    </>
  );
}

interface CountEntryParts {
  readonly label: string;
  readonly hint: string;
  readonly unit: string;
  readonly text: string;
  readonly typing: (text: string) => void;
}

function CountEntry(parts: CountEntryParts) {
  return (
    <TextField {...parts} figure wrong={countOf(parts.text) === undefined ? 'Write a whole number.' : undefined} />
  );
}

function countOf(text: string): number | undefined {
  const plain = text.trim() === '' ? '0' : text.trim();
  return /^\d{1,4}$/.test(plain) ? Number(plain) : undefined;
}
