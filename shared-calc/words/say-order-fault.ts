import { sayBuyFault } from '#shared-calc/buy/buy-fault.ts';
import { listMissing } from '#shared-calc/buy/say-missing.ts';
import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import { sayPriceFault } from '#shared-calc/price/price-fault.ts';
import { byRuleName, type Called } from './called.ts';
import { sayBoxCause } from './say-box-cause.ts';

/** Why an order has no needs, sums or price, in one sentence that names the line or size. */
export function sayOrderFault(fault: OrderFault, called: Called = byRuleName): string {
  switch (fault.kind) {
    case 'no-amount-yet': {
      const { line, column, cause } = fault.box;
      const why = cause ? sayBoxCause(cause, line.name, called) : 'has no figure.';
      return `${called.size(column)}, ${called.lineFirst(line.name)}: ${why}`;
    }
    case 'unknown-material':
    case 'no-packs':
    case 'no-price':
    case 'no-amount':
      return sayBuyFault(fault);
    case 'figures-not-given':
      return listMissing(fault.missing);
    default:
      return sayPriceFault(fault);
  }
}
