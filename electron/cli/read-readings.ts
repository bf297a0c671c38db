import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Done } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Arguments, OptionTable } from './read-arguments.ts';

type Readings = NonNullable<Done['readings']>;
type Key = keyof Readings;

/** Each option with its reading and the unit of a bare number. */
const figures = {
  low: ['lowC', 'degC'],
  high: ['highC', 'degC'],
  'low-humidity': ['lowHumidity', '%'],
  'high-humidity': ['highHumidity', '%'],
  drained: ['drainedL', 'L'],
  leaves: ['leavesG', 'g'],
  plants: ['plants', 'each'],
  deaths: ['deaths', 'each'],
} as const satisfies Readonly<Record<string, readonly [Key, string]>>;

const answers = ['eating', 'active'] as const satisfies readonly Key[];

export const readingOptions = {
  low: 'text',
  high: 'text',
  'low-humidity': 'text',
  'high-humidity': 'text',
  drained: 'text',
  leaves: 'text',
  plants: 'text',
  deaths: 'text',
  eating: 'text',
  active: 'text',
} as const satisfies OptionTable;

/** What was read, by its options; `undefined` if nothing was. */
export function readReadings(given: Arguments): Result<Readings | undefined, string> {
  const found: Partial<Record<Key, number | boolean>> = {};
  for (const [option, [key, unit]] of Object.entries(figures)) {
    const text = given.text(option);
    if (text === undefined) continue;
    const value = figureOf(text, unit);
    if (value === undefined) return failed(`--${option} ${text}: give a figure, as "${examples[option] ?? '3'}".`);
    found[key] = value;
  }
  for (const key of answers) {
    const text = given.text(key);
    if (text === undefined) continue;
    if (text !== 'yes' && text !== 'no') return failed(`--${key} ${text}: yes or no.`);
    found[key] = text === 'yes';
  }
  return ok(Object.keys(found).length === 0 ? undefined : (found as Readings));
}

const examples: Readonly<Record<string, string>> = {
  low: '21 degC',
  high: '25 degC',
  'low-humidity': '75 %',
  'high-humidity': '95 %',
  drained: '1.2 L',
  leaves: '29 g',
};

/** In the unit of its record: humidity is a share there. */
function figureOf(text: string, symbol: string): number | undefined {
  const figure = readFigure(text, { unit: symbol });
  const unit = unitOf(symbol === '%' ? 'share' : symbol);
  if (!figure.ok || !sameDimension(figure.value.unit.dimension, unit.dimension)) return undefined;
  return cleanNoise(fromBase(figure.value.value, unit));
}
