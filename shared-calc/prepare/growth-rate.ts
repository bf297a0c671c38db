import type { CultureKind } from '#shared-calc/records/records.ts';

/** Growth a day, and what it may be from and to where its temperature is not the one it was measured at. */
export interface GrowthRate {
  readonly perDay: number;
  readonly from: number;
  readonly to: number;
}

/** How many times faster 10 K warmer may be; from memory. */
const LEAST_Q10 = 1.5;
const MOST_Q10 = 3;

/**
 * The growth of a kind at a temperature; as measured where none is given. Nothing outside the temperatures it stands,
 * where only counting tells, and for flies, whose tubs are used up.
 */
export function growthRate(kind: CultureKind, degC?: number): GrowthRate | undefined {
  const { ratePerDay, lowestC, highestC, q10, atC } = kind;
  if (ratePerDay === undefined) return undefined;
  if (degC === undefined || degC === atC) return { perDay: ratePerDay, from: ratePerDay, to: ratePerDay };
  if (degC < lowestC || degC > highestC) return undefined;
  const at = (factor: number) => ratePerDay * factor ** ((degC - atC) / 10);
  const perDay = at(q10);
  return {
    perDay,
    from: Math.min(perDay, at(LEAST_Q10), at(MOST_Q10)),
    to: Math.max(perDay, at(LEAST_Q10), at(MOST_Q10)),
  };
}
