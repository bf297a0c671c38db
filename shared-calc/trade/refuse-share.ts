import type { Refusal } from './first-refusal.ts';
import { sayPlain } from './say-plain.ts';
import { refused } from './trade-function.ts';

/** Refuses the first of the named shares below 0 or above 1, for example if 80 was typed for 80 %. */
export function outsideShare(shares: Readonly<Record<string, number>>): Refusal | undefined {
  const wrong = Object.entries(shares).find(([, share]) => share < 0 || share > 1);
  return wrong && refused(`${wrong[0]} is a share from 0 to 1; you gave ${sayPlain(wrong[1], 4)}.`);
}
