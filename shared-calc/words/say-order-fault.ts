import { sayBuyFault } from '#shared-calc/buy/buy-fault.ts';
import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import { sayPriceFault } from '#shared-calc/price/price-fault.ts';
import { sayBoxCause } from './say-box-cause.ts';

/** Why an order has no needs, sums or price, in one sentence that names the place. */
export function sayOrderFault(fault: OrderFault): string {
  switch (fault.kind) {
    case 'no-amount-yet': {
      const { line, column, cause } = fault.box;
      return `${column}, ${line.name}: ${cause ? sayBoxCause(cause, line.name) : 'has no figure.'}`;
    }
    case 'unknown-material':
    case 'no-packs':
    case 'no-price':
    case 'no-amount':
      return sayBuyFault(fault);
    default:
      return sayPriceFault(fault);
  }
}
