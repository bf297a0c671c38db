import { useEffect, useRef, useState } from 'preact/hooks';
import { plainOptions } from '#renderer/books/choice-field.ts';
import { contextNow } from '#renderer/books/book-hands.ts';
import { ChoiceEntry, TextEntry } from '#renderer/books/entry.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import type { MoneyHands } from '#renderer/places/jobs/money-hands.ts';
import { unitOfGoods } from '#shared-calc/papers/unit-of-goods.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { jobOptions } from './job-options.ts';
import { asksOf, putInAsked, type PutInWishes } from './asked-entry.ts';

interface SheetParts {
  readonly hands: MoneyHands;
  readonly material: string | undefined;
  readonly close: () => void;
}

const fields: readonly (readonly [keyof Pick<PutInWishes, 'bestBefore' | 'quarantineUntil' | 'note'>, string])[] = [
  ['bestBefore', 'Best before'],
  ['quarantineUntil', 'In quarantine until'],
  ['note', 'Note'],
];

/** Puts something into the Store by hand. */
export function PutInSheet({ hands, material, close }: SheetParts) {
  const sheet = useRef<HTMLDialogElement>(null);
  const { records, display, today } = contextNow(hands);
  const goods = storedGoods(records);
  const [wishes, setWishes] = useState(asksOf(material ?? goods[0]?.value ?? ''));
  const [wrong, setWrong] = useState<string>();
  useEffect(() => sheet.current?.showModal(), []);
  const put = () => {
    const done = putInAsked(records, wishes, { display, today });
    setWrong(done.ok ? undefined : done.fault);
    if (!done.ok) return;
    hands.apply(done.value);
    location.hash = writeRoute('store', wishes.material);
    sheet.current?.close();
  };
  const unit = unitOfGoods(wishes.material, records) ?? 'each';
  const change = (some: Partial<PutInWishes>) => setWishes({ ...wishes, ...some });
  return (
    <dialog ref={sheet} class="sheet" aria-labelledby="put-in-title" onClose={close}>
      <h2 id="put-in-title">Put into the Store</h2>
      <div class="entries wide">
        <ChoiceEntry
          label="Material"
          value={wishes.material}
          options={goods}
          choose={(id) => change({ material: id })}
        />
        <TextEntry
          label="Amount"
          unit={unit === 'each' ? '' : unit}
          figure
          text={wishes.amount}
          typing={(amount) => change({ amount })}
          enter={put}
        />
        <ChoiceEntry
          label="Pack"
          value={wishes.sealed ? 'sealed' : 'opened'}
          options={plainOptions(['sealed', 'opened'])}
          choose={(word) => change({ sealed: word === 'sealed' })}
        />
        <ChoiceEntry
          label="Kept for"
          value={wishes.job}
          options={jobOptions(records, 'nobody')}
          choose={(job) => change({ job })}
        />
        {fields.map(([key, label]) => (
          <TextEntry
            key={key}
            label={label}
            text={wishes[key]}
            typing={(text) => change({ [key]: text })}
            enter={put}
          />
        ))}
      </div>
      <p class="rule-fault" role="alert">
        {wrong}
      </p>
      <div class="pair">
        <button class="button" type="button" onClick={() => sheet.current?.close()}>
          Leave it
        </button>
        <button class="button act" type="button" onClick={put}>
          Put it in
        </button>
      </div>
    </dialog>
  );
}

/** What can lie in the Store: all materials but those cut to size, and tanks. */
function storedGoods({
  material,
  tank,
}: Pick<Records, 'material' | 'tank'>): readonly { readonly value: string; readonly label: string }[] {
  const materials = [...material.values()].filter(({ sale }) => sale !== 'cut');
  return [...materials, ...tank.values()].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
}
