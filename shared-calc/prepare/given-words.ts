import { showGiven, showValue, showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';

/** A given figure with its unit, to the step it was given in: `100 kg`, where a worked one is `73.27 kg`. */
export function givenWords(value: number | string | boolean, unit: string, display: Display): string {
  const behind = showWithUnit(value, unit, display).slice(showValue(value, unit, display).length);
  return `${showGiven(value, unit, display)}${behind}`;
}
