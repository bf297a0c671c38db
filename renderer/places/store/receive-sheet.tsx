import { QUARANTINE_DAYS } from '#shared-calc/acts/store-acts.ts';
import { useMemo, useState } from 'preact/hooks';
import { contextNow } from '#renderer/books/book-hands.ts';
import { ChoiceEntry, TextEntry } from '#renderer/books/entry.tsx';
import { useOpenSheet } from '#renderer/frame/use-open-sheet.ts';
import { Button } from '#renderer/kit/button.tsx';
import type { MoneyHands } from '#renderer/store/money-hands.ts';
import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { expectedGoods, type ExpectedOrder } from '#shared-calc/derive/expected-goods.ts';

interface SheetParts {
  readonly hands: MoneyHands;
  readonly close: () => void;
}

/** An order that came in: the packs that ordered jobs wait for, counted as they lie there. */
export function ReceiveSheet({ hands, close }: SheetParts) {
  const sheet = useOpenSheet();
  const derived = contextNow(hands);
  const orders = useMemo(() => expectedGoods(derived), [derived]);
  const [supplier, setSupplier] = useState<string>();
  const known = orders.ok ? orders.value : [];
  const order = known.find((each) => each.supplier === supplier) ?? known[0];
  return (
    <dialog ref={sheet} class="sheet wide" aria-labelledby="receive-title" onClose={close}>
      <h2 id="receive-title">Receive an order</h2>
      {!orders.ok && <p class="rule-fault">{sayJobFault(orders.fault)}</p>}
      {orders.ok && !order && (
        <p>
          No job that is ordered waits for anything. Mark jobs as ordered on the shopping run, or put goods in by hand.
        </p>
      )}
      {order && (
        <>
          <ChoiceEntry
            label="Supplier"
            value={order.supplier}
            options={known.map(({ supplier: id, name }) => ({ value: id, label: name }))}
            choose={setSupplier}
          />
          <Counted key={order.supplier} order={order} hands={hands} done={() => sheet.current?.close()} />
        </>
      )}
      {!order && (
        <div class="pair">
          <Button look="main" onClick={() => sheet.current?.close()}>
            Leave it
          </Button>
        </div>
      )}
    </dialog>
  );
}

interface CountedParts {
  readonly order: ExpectedOrder;
  readonly hands: MoneyHands;
  readonly done: () => void;
}

function Counted({ order, hands, done }: CountedParts) {
  const { display } = contextNow(hands);
  const [texts, setTexts] = useState(order.packs.map(({ count }) => String(count)));
  const [days, setDays] = useState(String(QUARANTINE_DAYS));
  const counts = texts.map(countOf);
  const quarantineDays = countOf(days);
  const hasPlants = order.packs.some(({ isPlant }) => isPlant);
  const isReadable = counts.every((count) => count !== undefined) && quarantineDays !== undefined;
  const take = () => {
    if (!isReadable) return;
    const packs = order.packs.map(({ material, amount }, at) => ({ material, amount, count: counts[at] ?? 0 }));
    hands.doAct('receive', { supplier: order.supplier, packs, quarantineDays }, done);
  };
  return (
    <>
      <div class="scroll received" tabIndex={0} role="group" aria-label="Packs that came">
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
      </div>
      <div class="pair">
        <Button onClick={done}>Leave it</Button>
        <Button look="main" disabled={!isReadable} onClick={take}>
          Put it into the Store
        </Button>
      </div>
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
    <TextEntry {...parts} figure wrong={countOf(parts.text) === undefined ? 'Write a whole number.' : undefined} />
  );
}

function countOf(text: string): number | undefined {
  const plain = text.trim() === '' ? '0' : text.trim();
  return /^\d{1,4}$/.test(plain) ? Number(plain) : undefined;
}
