import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';

export interface ShownAmount {
  readonly figure: number;
  readonly unit: string;
}

/** An amount of goods in the unit that the workshop sees: 57.134 L is 15.093 gal where it sees gallons. */
export function shownAmount(amount: number, unit: string, display: Display): ShownAmount {
  const shown = shownUnit(unit, display);
  const figure = shown === unit ? amount : fromBase(toBase(amount, unitOf(unit)), unitOf(shown));
  return { figure: cleanNoise(figure), unit: shown };
}
