import type { BookContext } from '#renderer/books/book-hands.ts';
import type { Field } from '#renderer/books/field.ts';
import { figureField } from '#renderer/books/figure-field.ts';
import { moneyField } from '#renderer/books/money-field.ts';
import { namedKinds } from '#shared-calc/quantity/kind.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { unitsLike } from '#shared-calc/quantity/unit.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';

/** Fields of the workshop under a heading. */
export interface FieldGroup {
  readonly title: string;
  readonly fields: readonly (Field<Workshop> & { readonly hint?: string })[];
}

/** The figures of the workshop, as they are grouped on its page. */
export function workshopFields(context: BookContext): readonly FieldGroup[] {
  return [
    { title: 'Quotes and prices', fields: quoteFields(context) },
    { title: 'Put aside in every price', fields: reserveFields(context.display) },
    { title: 'What clients pay to run a tank', fields: runningFields(context.display) },
    { title: 'Where the workshop stands', fields: siteFields(context.display) },
  ];
}

function quoteFields({ display, workshop }: BookContext): FieldGroup['fields'] {
  const days = (key: 'quoteValidDays' | 'oldPriceDays', name: string, hint: string) => ({
    ...figureField<Workshop>(key, { name, stored: 'd', whole: true, low: 1, high: 3_650 }, display),
    hint,
  });
  return [
    days('quoteValidDays', 'A quote is valid for', 'the last day stands on the quote'),
    days('oldPriceDays', 'A price is old after', 'it is then marked wherever it counts'),
    shareField('depositShare', 'Deposit', { hint: 'of the price, tax included', display }),
    { ...stepField('depositStepCoins', 'Deposit in steps of', workshop), hint: 'the deposit goes up to the next' },
    {
      ...stepField('priceStepCoins', 'Price before tax in steps of', workshop),
      hint: '0 leaves the price as it comes out',
    },
    shareField('discountShare', 'Discount', { hint: 'off the price before tax', display }),
  ];
}

function reserveFields(display: Display): FieldGroup['fields'] {
  return [
    shareField('contingencyShare', 'For what comes up', { hint: 'of the cost', display }),
    shareField('warrantyShare', 'For warranty', { hint: 'of the price', display }),
    shareField('plantLossShare', 'For plants that fail', { hint: 'of the cost of plants', display }),
  ];
}

/** Shown on the options page once they are known; nobody pays more than this for a kilowatt hour or a litre. */
const DEAREST = 100_000;

function runningFields(display: Display): FieldGroup['fields'] {
  const rate = (key: 'electricityPerKwh' | 'waterPerL', name: string, per: string) => ({
    ...figureField<Workshop>(
      key,
      { name, stored: 'number', unit: `${display.currency}/${per}`, low: 0, high: DEAREST, mayBeEmpty: true },
      display,
    ),
    hint: 'empty: the options page says no money for it',
  });
  return [rate('electricityPerKwh', 'Electricity', 'kWh'), rate('waterPerL', 'Water', 'L')];
}

function siteFields(display: Display): FieldGroup['fields'] {
  const altitude = { name: 'Altitude', stored: 'm', shown: heightUnit(display), low: -430, high: 5_000 };
  const pressure = {
    name: 'Pressure of the vessel',
    stored: 'kPa',
    shown: shownUnit('kPa', display),
    low: 0,
    high: 300,
  };
  return [
    {
      ...figureField<Workshop>('altitudeM', altitude, display),
      hint: 'steam is cooler higher up; each recipe has its own altitude line',
    },
    {
      ...figureField<Workshop>('pressureKpa', pressure, display),
      hint: 'over the air around it, by its weight or gauge',
    },
  ];
}

interface ShareParts {
  readonly hint: string;
  readonly display: Display;
}

function shareField(key: ShareKey, name: string, { hint, display }: ShareParts): FieldGroup['fields'][number] {
  return { ...figureField<Workshop>(key, { name, stored: 'share', shown: '%', low: 0, high: 0.95 }, display), hint };
}

type ShareKey = 'depositShare' | 'discountShare' | 'contingencyShare' | 'warrantyShare' | 'plantLossShare';

/** A height is told in metres or feet, never in mm. */
function heightUnit(display: Display): string {
  return ['in', 'ft'].includes(display.unitsShown['length'] ?? '') ? 'ft' : 'm';
}

/** A deposit goes in steps of a coin at least. */
function stepField(key: 'depositStepCoins' | 'priceStepCoins', title: string, workshop: Workshop): Field<Workshop> {
  const field = moneyField<Workshop>(key, { title }, workshop);
  if (key === 'priceStepCoins') return field;
  return {
    ...field,
    read: (text, record) => {
      const read = field.read(text, record);
      return read.ok && read.value.depositStepCoins < 1 ? failed(`${title} is one coin or more.`) : read;
    },
  };
}

/** The currency by its code: three letters of ISO 4217, or a short word of one's own. */
export const currencyField: Field<Workshop> = {
  key: 'currency',
  title: 'Currency',
  unit: '',
  look: 'words',
  width: 5,
  show: ({ currency }) => currency,
  entry: ({ currency }) => currency,
  read: (text, workshop) => {
    const code = text.trim();
    if (!/^\p{L}{1,3}$/u.test(code)) return failed('A currency is one to three letters, such as EUR or cr.');
    return ok({ ...workshop, currency: code });
  },
};

/** How many decimals the world gives this currency; `undefined` for a word of one's own. */
export function usualDecimals(currency: string): number | undefined {
  if (!/^[A-Z]{3}$/.test(currency) || !Intl.supportedValuesOf('currency').includes(currency)) return undefined;
  return new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits;
}

export interface UnitChoice {
  readonly kind: string;
  readonly units: readonly string[];
}

/** Kinds whose figures may be shown in several units. */
export const unitChoices: readonly UnitChoice[] = [
  ...namedKinds.filter(({ shown }) => shown.length > 1).map(({ name, shown }) => ({ kind: name, units: shown })),
  { kind: 'temperature', units: unitsLike('degC') },
];

/** The workshop with a unit shown for a kind; an empty one leaves each line its own. */
export function withUnitShown(workshop: Workshop, kind: string, unit: string): Workshop {
  const { [kind]: _, ...others } = workshop.unitsShown;
  return { ...workshop, unitsShown: unit === '' ? others : { ...others, [kind]: unit } };
}

/** The workshop open on a day of the week, or not; it is open on one at least. */
export function withOpenDay(workshop: Workshop, day: number, open: boolean): Workshop | undefined {
  const others = workshop.openWeekdays.filter((each) => each !== day);
  const openWeekdays = open ? [...others, day].toSorted((a, b) => a - b) : others;
  return openWeekdays.length === 0 ? undefined : { ...workshop, openWeekdays };
}
