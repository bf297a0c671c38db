import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';

/** Why something cannot be bought or costed: facts. */
export type BuyFault =
  | { readonly kind: 'unknown-material'; readonly material: string }
  | { readonly kind: 'no-packs'; readonly material: string; readonly label: string }
  | (PackFacts & { readonly kind: 'no-price'; readonly on: string })
  | (PackFacts & { readonly kind: 'no-amount' });

export interface PackFacts {
  readonly material: string;
  readonly label: string;
  readonly amount: number;
  readonly unit: string;
}

export function sayBuyFault(fault: BuyFault): string {
  switch (fault.kind) {
    case 'unknown-material':
      return `Nothing called ${fault.material} in the material book or the tank book.`;
    case 'no-packs':
      return `${fault.label} has no pack in the material book: add one, with its price.`;
    case 'no-price':
      return `Pack of ${sayPack(fault)} has no price since ${fault.on}.`;
    case 'no-amount':
      return `Pack of ${sayPack(fault)} holds nothing: give it a size.`;
  }
}

function sayPack({ amount, unit, label }: PackFacts): string {
  return unit === 'each' ? `${cleanNoise(amount)} ${label}` : `${cleanNoise(amount)} ${unit} ${label}`;
}
