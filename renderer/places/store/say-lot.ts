import type { LotStock } from '#shared-calc/buy/ledger.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';

/** What a lot is today: `opened, 3 L kept for J02, in quarantine until 31 March 2027`. */
export function sayLot(lot: LotStock, unit: string, { display, today }: Pick<Derived, 'display' | 'today'>): string {
  const { until, bestBefore } = lot.lot.came;
  return [
    lot.opened ? 'opened' : 'sealed',
    ...[...lot.kept].map(([job, amount]) => `${goodsWords(amount, unit, display)} kept for ${job}`),
    ...(lot.quarantined && until !== undefined ? [`in quarantine until ${paperDay(until, display)}`] : []),
    ...(bestBefore !== undefined && bestBefore < today ? ['past its best'] : []),
  ].join(', ');
}
