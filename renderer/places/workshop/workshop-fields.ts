import { namedKinds } from '#shared-calc/quantity/kind.ts';
import { unitsLike } from '#shared-calc/quantity/unit.ts';
import type { Workshop } from '#shared-calc/records/records.ts';

type Key = keyof Workshop;

/** Figures of the workshop, as they are grouped on its page. */
export const figureGroups: readonly { readonly title: string; readonly keys: readonly Key[] }[] = [
  {
    title: 'Quotes and prices',
    keys: ['quoteValidDays', 'oldPriceDays', 'depositShare', 'depositStepCoins', 'priceStepCoins', 'discountShare'],
  },
  { title: 'Put aside in every price', keys: ['contingencyShare', 'warrantyShare', 'plantLossShare'] },
  { title: 'What clients pay to run a tank', keys: ['electricityPerKwh', 'waterPerL'] },
  { title: 'Where the workshop stands', keys: ['altitudeM', 'pressureKpa'] },
];

export const wordFields: readonly Key[] = ['name', 'place', 'letterhead', 'terms', 'payment'];

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
