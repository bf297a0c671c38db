import { capital } from '#shared-calc/rule/capital.ts';
import type { ComponentChildren } from 'preact';
import type { BookContext, BookHands } from '#renderer/books/book-hands.ts';
import { ChoiceField, SettledField, Fields } from '#renderer/kit/field.tsx';
import type { Field } from '#renderer/books/field.ts';
import { wordsField } from '#renderer/books/words-field.ts';
import { Hint } from '#renderer/kit/note.tsx';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { ok } from '#shared-calc/result.ts';
import {
  currencyField,
  unitChoices,
  usualDecimals,
  withOpenDay,
  withUnitShown,
  workshopFields,
} from './workshop-fields.ts';
import css from './workshop.module.css';

interface WorkshopParts {
  readonly context: BookContext;
  readonly hands: BookHands;
}

/** What holds for the whole house: its letterhead, its money, its days and its habits. */
export function WorkshopPage({ context, hands }: WorkshopParts) {
  const settle = settler(context, hands);
  return (
    <>
      <Group title="Letterhead">
        <FieldEntry
          field={wordsField<Workshop>('name', { title: 'Name' })}
          workshop={context.workshop}
          settle={settle}
        />
        <FieldEntry
          field={wordsField<Workshop>('place', { title: 'Place' })}
          workshop={context.workshop}
          settle={settle}
        />
        {longFields.map((field) => (
          <div key={field.key} class={css['wideEntry']}>
            <FieldEntry field={field} workshop={context.workshop} settle={settle} lines />
          </div>
        ))}
      </Group>
      <Money context={context} hands={hands} />
      {workshopFields(context).map(({ title, fields }) => (
        <Group key={title} title={title}>
          {fields.map((field) => (
            <FieldEntry key={field.key} field={field} workshop={context.workshop} settle={settle} hint={field.hint} />
          ))}
        </Group>
      ))}
      <OpenDays context={context} hands={hands} />
      <Units context={context} hands={hands} />
    </>
  );
}

/** Words on several lines stay on them. */
const longFields: readonly Field<Workshop>[] = (
  [
    ['letterhead', 'Letterhead, as printed on a quote'],
    ['terms', 'Terms'],
    ['payment', 'How to pay'],
  ] as const
).map(([key, title]) => ({
  ...wordsField<Workshop>(key, { title }),
  read: (text, workshop) => ok({ ...workshop, [key]: text.trimEnd() }),
}));

type Settle = (field: Field<Workshop>, text: string) => string | undefined;

function settler({ workshop }: BookContext, hands: BookHands): Settle {
  return (field, text) => {
    const read = field.read(text, workshop);
    if (!read.ok) return read.fault;
    return hands.doAct('put', { kind: 'workshop', record: read.value });
  };
}

interface FieldEntryParts {
  readonly field: Field<Workshop>;
  readonly workshop: Workshop;
  readonly settle: Settle;
  readonly lines?: boolean;
  readonly hint?: string | undefined;
}

function FieldEntry({ field, workshop, settle, lines = false, hint }: FieldEntryParts) {
  return (
    <SettledField
      label={field.title}
      unit={field.unit}
      figure={field.look === 'figure'}
      text={field.entry(workshop)}
      settle={(text) => settle(field, text)}
      lines={lines}
      longest={lines ? 10_000 : 2_000}
      {...(hint !== undefined && { hint })}
    />
  );
}

function Group({ title, children }: { readonly title: string; readonly children: ComponentChildren }) {
  return (
    <section class={css['workshopGroup']}>
      <h2>{title}</h2>
      <Fields>{children}</Fields>
    </section>
  );
}

function Money({ context, hands }: WorkshopParts) {
  const { workshop } = context;
  const usual = usualDecimals(workshop.currency);
  const setDecimals = (text: string) => {
    hands.doAct('rescaleCoins', { coinDecimals: Number(text) });
  };
  const setSign = (sign: string) => {
    hands.doAct('put', { kind: 'workshop', record: { ...workshop, decimalComma: sign === 'comma' } });
  };
  return (
    <Group title="Money and figures">
      <FieldEntry
        field={currencyField}
        workshop={workshop}
        settle={settler(context, hands)}
        hint="EUR, GBP, or a word of one's own"
      />
      <ChoiceField
        label="Decimals of the currency"
        value={String(workshop.coinDecimals)}
        options={['0', '1', '2', '3', '4'].map((value) => ({ value, label: value }))}
        choose={setDecimals}
        {...(usual !== undefined && { hint: `${workshop.currency} usually has ${usual}` })}
      />
      <ChoiceField
        label="Decimal sign"
        value={workshop.decimalComma ? 'comma' : 'point'}
        options={[
          { value: 'point', label: 'point, 12.5' },
          { value: 'comma', label: 'comma, 12,5' },
        ]}
        choose={setSign}
        hint="rules keep the point"
      />
    </Group>
  );
}

const dayNames = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

function OpenDays({ context: { workshop }, hands }: WorkshopParts) {
  const set = (day: number, input: HTMLInputElement) => {
    const to = withOpenDay(workshop, day, input.checked);
    if (!to) {
      input.checked = true;
      return hands.refuse('The workshop is open on one day of the week at least.');
    }
    hands.doAct('put', { kind: 'workshop', record: to });
  };
  return (
    <section class={css['workshopGroup']}>
      <fieldset class={css['days']}>
        <legend>
          <h2>Open on</h2>
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

function Units({ context: { workshop }, hands }: WorkshopParts) {
  const set = (kind: string, unit: string) => {
    hands.doAct('put', { kind: 'workshop', record: withUnitShown(workshop, kind, unit) });
  };
  return (
    <Group title="Units shown">
      {unitChoices.map(({ kind, units }) => (
        <ChoiceField
          key={kind}
          label={capital(kind)}
          value={workshop.unitsShown[kind] ?? ''}
          options={[
            { value: '', label: 'as each line has it' },
            ...units.map((unit) => ({ value: unit, label: unitWords(unit, workshop.currency) })),
          ]}
          choose={(unit) => set(kind, unit)}
        />
      ))}
    </Group>
  );
}
