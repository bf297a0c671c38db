import { sayKind, type Kind } from '#shared-calc/quantity/kind.ts';

/** The plural words for the unit of a kind. */
const plurals: Readonly<Record<string, string>> = {
  length: 'millimetres',
  area: 'square metres',
  volume: 'litres',
  mass: 'kilograms',
  pressure: 'kilopascals',
  time: 'minutes',
  money: 'money',
  power: 'watts',
  energy: 'kilowatt hours',
  light: 'moles of light',
  density: 'kilograms per litre',
  'mass per area': 'grams per square metre',
  flow: 'millilitres a day',
  rate: 'a rate per day',
  'count per area': 'a count per square metre',
  'count per length': 'a count per metre',
  'money per time': 'money per hour',
  'money per mass': 'money per kilogram',
  'money per volume': 'money per litre',
  temperature: 'a temperature',
  'temperature step': 'a step of temperature',
  count: 'a plain count',
  share: 'a share',
  number: 'a plain number',
  choice: 'a choice',
  yes_no: 'a yes or no',
};

/** "litres", "millimetres", "a plain number": the words for a kind next to another that does not fit. */
export function sayMeasures(kind: Kind): string {
  const name = sayKind(kind);
  return plurals[name] ?? name;
}

const uncounted = new Set(['money', 'light', 'power', 'energy', 'pressure', 'time', 'mass', 'yes_no']);

/** "a length", "an area", "a yes or no": the words for an expected kind. */
export function sayOneOf(kind: Kind): string {
  return withArticle(sayKind(kind));
}

export function withArticle(name: string): string {
  if (name === 'yes_no') return 'a yes or no';
  if (name === 'number') return 'a plain number';
  if (uncounted.has(name)) return name;
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;
}
