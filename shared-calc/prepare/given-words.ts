import { showGiven, showValue, showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';

/** A given figure with its unit, to its own precision: `100 kg`, where a worked-out one is `73.27 kg`. */
export function givenWords(value: number | string | boolean, unit: string, display: Display): string {
  const behind = showWithUnit(value, unit, display).slice(showValue(value, unit, display).length);
  return `${showGiven(value, unit, display)}${behind}`;
}
