import { useId } from 'preact/hooks';
import { SettledField } from '#renderer/kit/field.tsx';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { currencies, currencyLabel, findCurrency } from '#shared-calc/quantity/currencies.ts';
import { editField } from '#shared-calc/records/edit-field.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import type { BookApi, BookContext } from './book-api.ts';

interface CurrencyParts {
  readonly context: BookContext;
  readonly api: Pick<BookApi, 'doAct'>;
}

/** The currency of the workshop: one of the list by its code or name, or a word of one's own. */
export function CurrencyField({ context, api }: CurrencyParts) {
  const { workshop } = context;
  const list = useId();
  const { heading } = recordFields.workshop.currency;
  const settle = (text: string) => {
    const known = findCurrency(text);
    const to = editField({ kind: 'workshop', record: workshop, key: 'currency', text: known?.code ?? text }, context);
    if (!to.ok) return sayFieldFault(to.fault);
    return api.doAct('chooseCurrency', { currency: to.value.currency });
  };
  const named = findCurrency(workshop.currency);
  return (
    <>
      <SettledField
        label={heading}
        text={workshop.currency}
        settle={settle}
        list={list}
        hint={named ? named.name : 'by code or name, such as EUR; or a word of one to three letters'}
      />
      <datalist id={list}>
        {currencies.map(({ code, name }) => (
          <option key={code} value={currencyLabel({ code, name })} />
        ))}
      </datalist>
    </>
  );
}
