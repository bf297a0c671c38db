import type { Refusal } from './first-refusal.ts';
import { sayPlain } from './say-plain.ts';
import { refused } from './trade-function.ts';

/** Refuses the first of the named shares below 0 or above 1, for example if 80 was typed for 80 %. */
export function outsideShare(shares: Readonly<Record<string, number>>): Refusal | undefined {
  for (const name of Object.keys(shares)) {
    const share = shares[name] ?? 0;
    if (share < 0 || share > 1) return refused(`${name} is a share from 0 to 1; you gave ${sayPlain(share, 4)}.`);
  }
  return undefined;
}
