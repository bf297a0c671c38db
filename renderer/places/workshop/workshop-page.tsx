import { ChoiceField } from '#renderer/kit/field.tsx';
import { CurrencyField } from '#renderer/books/currency-field.tsx';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { findCurrency } from '#shared-calc/quantity/currencies.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { fieldOf, headingOf } from '#shared-calc/fields/record-fields.ts';
import { figureGroups, withOpenDay, wordFields } from './workshop-fields.ts';
import { Group, type WorkshopParts } from './workshop-group.tsx';
import { UnitsPart } from './units-part.tsx';
import css from './workshop.module.css';

/** Settings of the whole house: its letterhead, money, days and habits. */
export function WorkshopPage(parts: WorkshopParts) {
  return (
    <>
      <Group title="Letterhead">
        {wordFields.map((key) => (
          <div key={key} class={fieldOf('workshop', key)?.lines ? css['wideEntry'] : undefined}>
            <WorkshopEntry {...parts} field={key} />
          </div>
        ))}
      </Group>
      <Money {...parts} />
      {figureGroups.map(({ title, keys }) => (
        <Group key={title} title={title}>
          {keys.map((key) => (
            <WorkshopEntry key={key} {...parts} field={key} />
          ))}
        </Group>
      ))}
      <OpenDays {...parts} />
      <UnitsPart {...parts} />
    </>
  );
}

function WorkshopEntry({ context, api, field }: WorkshopParts & { readonly field: keyof Workshop }) {
  return (
    <FieldEntry
      kind="workshop"
      record={context.workshop}
      field={field}
      context={context}
      put={(record) => api.doAct('put', { kind: 'workshop', record })}
    />
  );
}

function Money({ context, api }: WorkshopParts) {
  const { workshop } = context;
  const usual = findCurrency(workshop.currency)?.decimals;
  const setDecimals = (text: string) => {
    api.doAct('rescaleCoins', { coinDecimals: Number(text) });
  };
  const setSign = (sign: string) => {
    api.doAct('put', { kind: 'workshop', record: { ...workshop, decimalComma: sign === 'comma' } });
  };
  return (
    <Group title="Money and figures">
      <CurrencyField context={context} api={api} />
      <ChoiceField
        label={headingOf('workshop', 'coinDecimals')}
        value={String(workshop.coinDecimals)}
        options={['0', '1', '2', '3', '4'].map((value) => ({ value, label: value }))}
        choose={setDecimals}
        {...(usual !== undefined && { hint: `${workshop.currency} usually has ${usual}` })}
      />
      <ChoiceField
        label={headingOf('workshop', 'decimalComma')}
        value={workshop.decimalComma ? 'comma' : 'point'}
        options={[
          { value: 'point', label: 'point, 12.5' },
          { value: 'comma', label: 'comma, 12,5' },
        ]}
        choose={setSign}
        hint="rules keep the point, and ; stands between their figures"
      />
    </Group>
  );
}

const dayNames = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

function OpenDays({ context: { workshop }, api }: WorkshopParts) {
  const set = (day: number, input: HTMLInputElement) => {
    const to = withOpenDay(workshop, day, input.checked);
    if (!to) {
      input.checked = true;
      return api.refuse('The workshop is open on one day of the week at least.');
    }
    api.doAct('put', { kind: 'workshop', record: to });
  };
  return (
    <section class={css['workshopGroup']}>
      <fieldset class={css['days']}>
        <legend>
          <h2>{headingOf('workshop', 'openWeekdays')}</h2>
        </legend>
        {dayNames.map((name, at) => (
          <label key={name}>
            <input
              type="checkbox"
              checked={workshop.openWeekdays.includes(at + 1)}
              onChange={(event) => set(at + 1, event.currentTarget)}
            />{' '}
            {name}
          </label>
        ))}
      </fieldset>
      <Hint>Days on which you are shut besides stand in the rate book.</Hint>
    </section>
  );
}
