import { namedKinds } from '#shared-calc/quantity/kind.ts';
import { unitsLike } from '#shared-calc/quantity/unit.ts';
import type { Workshop } from '#shared-calc/records/records.ts';

type Key = keyof Workshop;

/** The workshop's figures, grouped as on its page. */
export const figureGroups: readonly { readonly title: string; readonly keys: readonly Key[] }[] = [
  {
    title: 'Quotes and prices',
    keys: ['quoteValidDays', 'oldPriceDays', 'depositShare', 'depositStepCoins', 'priceStepCoins', 'discountShare'],
  },
  { title: 'Put aside in every price', keys: ['contingencyShare', 'warrantyShare', 'plantLossShare'] },
  { title: 'What clients pay to run a tank', keys: ['electricityPerKwh', 'waterPerL'] },
  { title: 'Where the workshop stands', keys: ['altitudeM'] },
  { title: 'What leaves are treated in', keys: ['pressureKpa', 'steamWaterL', 'steamPowerKw', 'ovenPowerW'] },
];

export const wordFields: readonly Key[] = ['name', 'place', 'letterhead', 'terms', 'payment'];

export interface UnitChoice {
  readonly kind: string;
  readonly units: readonly string[];
}

/** Kinds of figure that can be shown in several units. */
export const unitChoices: readonly UnitChoice[] = [
  ...namedKinds.filter(({ shown }) => shown.length > 1).map(({ name, shown }) => ({ kind: name, units: shown })),
  { kind: 'temperature', units: unitsLike('degC') },
];

/** The workshop with a display unit for a kind; with an empty unit each line keeps its own. */
export function withUnitShown(workshop: Workshop, kind: string, unit: string): Workshop {
  const { [kind]: _, ...others } = workshop.unitsShown;
  return { ...workshop, unitsShown: unit === '' ? others : { ...others, [kind]: unit } };
}

/** The workshop with a weekday open or closed; `undefined` if no open day would be left. */
export function withOpenDay(workshop: Workshop, day: number, open: boolean): Workshop | undefined {
  const others = workshop.openWeekdays.filter((each) => each !== day);
  const openWeekdays = open ? [...others, day].toSorted((a, b) => a - b) : others;
  return openWeekdays.length === 0 ? undefined : { ...workshop, openWeekdays };
}
