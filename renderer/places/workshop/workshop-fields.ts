import { namedKinds } from '#shared-calc/quantity/kind.ts';
import { unitsLike } from '#shared-calc/quantity/unit.ts';
import { recordKinds, type Workshop } from '#shared-calc/records/records.ts';

type Key = keyof Workshop;

/** The workshop's figures, grouped as on its page. */
export const figureGroups: readonly { readonly title: string; readonly keys: readonly Key[] }[] = [
  {
    title: 'Quotes and prices',
    keys: ['quoteValidDays', 'oldPriceDays', 'depositShare', 'depositStepCoins', 'priceStepCoins', 'discountShare'],
  },
  { title: 'Plants that die', keys: ['plantsBasicDays', 'plantsFullDays', 'plantsShowDays'] },
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

/** The workshop with a display unit for a kind; with an empty one the kind is as the choice. */
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

export type WorkshopChoice = 'units' | 'dateOrder' | 'weekStart' | 'paper';

const usual = {
  metric: { units: 'metric', dateOrder: 'ymd', weekStart: 'Monday', paper: 'A4' },
  us: { units: 'us', dateOrder: 'mdy', weekStart: 'Sunday', paper: 'Letter' },
} as const;

/** What holds where nothing was chosen: as books have it from before. */
export function usualOf(field: WorkshopChoice): string {
  return usual.metric[field];
}

/** The workshop with a choice; with US units come the dates, the paper and the week of the US, where none was chosen. */
export function withChoice(workshop: Workshop, field: WorkshopChoice, value: string): Workshop {
  const to = recordKinds.workshop.parse({ ...workshop, [field]: value });
  return field === 'units' && value === 'us' ? { ...usual.us, ...to } : to;
}
