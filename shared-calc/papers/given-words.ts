import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';

/** A given figure with its unit, to the step it was given in: `100 kg`, where a worked one is `73.27 kg`; money keeps its coins. */
export function givenWords(value: number | string | boolean, unit: string, display: Display): string {
  const words = showWithUnit(value, unit, display);
  if (typeof value !== 'number' || unit.startsWith('money')) return words;
  const [figure = '', ...of] = words.split('\u00a0');
  const short = figure.includes(display.decimalComma ? ',' : '.') ? figure.replace(/[.,]?0+$/, '') : figure;
  return [short, ...of].join('\u00a0');
}
