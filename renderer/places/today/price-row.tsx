import { useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { ChoiceField, Fields, SettledField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { packsOf } from '#shared-calc/buy/pack-prices.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

interface PriceParts {
  /** The material, tank or plant. */
  readonly of: string;
  readonly label: string;
  readonly api: Pick<JobApi, 'doAct'>;
  readonly context: BookContext;
}

/** A price that a job waits for: what a pack of it costs from today on, and who sells it. */
export function PriceRow({ of, label, api, context }: PriceParts) {
  const { records, workshop } = context;
  const packs = packsOf(records, of);
  const unit = unitOfGoods(of, records) ?? 'each';
  const [chosen, choose] = useState(String(packs[0]?.amount ?? 1));
  const [supplier, setSupplier] = useState('');
  const settle = (text: string) => {
    if (text.trim() === '') return undefined;
    const coins = said(readMoney(text, workshop));
    if (!coins.ok) return coins.fault;
    const seller = supplier === '' ? {} : { supplier };
    return api.doAct('putPrice', { material: of, amount: Number(chosen), priceCoins: coins.value, ...seller });
  };
  const amounts = [...new Set(packs.map(({ amount }) => amount))];
  return (
    <Fields>
      <SettledField label={label} text="" unit={workshop.currency} figure settle={settle} hint="what a pack costs" />
      <ChoiceField
        label="Pack"
        of={label}
        value={chosen}
        options={(amounts.length === 0 ? [1] : amounts).map((amount) => ({
          value: String(amount),
          label: `${cleanNoise(amount)} ${unitWords(unit, '')}`.trim(),
        }))}
        choose={choose}
      />
      {records.supplier.size > 0 && (
        <PickOne
          label="Supplier"
          of={label}
          value={supplier}
          options={[
            { value: '', label: 'not said' },
            ...[...records.supplier.values()].map(({ id, name }) => ({ value: id, label: name })),
          ]}
          choose={setSupplier}
        />
      )}
    </Fields>
  );
}
