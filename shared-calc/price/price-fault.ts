import { MARGIN_BELOW_ONE } from '#shared-calc/trade/price/price-from-margin.ts';

/** Why a price cannot be worked out: facts. */
export type PriceFault =
  | { readonly kind: 'margin-too-high'; readonly group: string; readonly label: string; readonly margin: number }
  | { readonly kind: 'share-too-high'; readonly figure: 'warranty' | 'discount'; readonly share: number }
  | { readonly kind: 'no-margin'; readonly group: string }
  | { readonly kind: 'no-tax-class'; readonly taxClass: string }
  | { readonly kind: 'refused'; readonly says: string };

export function sayPriceFault(fault: PriceFault): string {
  switch (fault.kind) {
    case 'margin-too-high':
      return `${fault.label}: ${MARGIN_BELOW_ONE}`;
    case 'share-too-high':
      return `The ${fault.figure} is a share of the price and stays below 1.`;
    case 'no-margin':
      return `No margin for the quote group ${fault.group}: add one in the rate book.`;
    case 'no-tax-class':
      return `No tax class called ${fault.taxClass}: add one in the rate book.`;
    case 'refused':
      return fault.says;
  }
}
