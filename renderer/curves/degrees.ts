import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';

/** The degrees that a workshop reads off a thermometer. */
export interface Degrees {
  readonly unit: string;
  readonly of: (degC: number) => number;
}

export function degreesOf(display: Display): Degrees {
  const shown = unitOf(shownUnit('degC', display));
  return {
    unit: shownUnitWords('degC', display),
    of: (degC) => fromBase(toBase(degC, unitOf('degC')), shown),
  };
}
