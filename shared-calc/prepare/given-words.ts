import { showGiven, shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { unitBehind } from '#shared-calc/quantity/write-figure.ts';

/** A given figure with its unit, to its own precision: `100 kg`, where a worked-out one is `73.27 kg`. */
export function givenWords(value: number | string | boolean, unit: string, display: Display): string {
  const figure = showGiven(value, unit, display);
  return typeof value === 'number' ? `${figure}${unitBehind(shownUnit(unit, display), display.currency)}` : figure;
}
