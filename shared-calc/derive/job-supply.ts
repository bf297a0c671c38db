import { goodsStock } from '#shared-calc/prepare/goods-stock.ts';
import type { Supply } from '#shared-calc/buy/material-need.ts';
import type { Day } from '#shared-calc/calendar/day.ts';

export interface SuppliedJob {
  /** Left out: for nobody, so nothing that is kept counts. */
  readonly job?: string | undefined;
  readonly on: Day;
  readonly useOn: (material: string) => Day;
}

/**
 * What the store and the open orders give to one job on its days of use: kept and ordered for it, and what is free. What is
 * ordered for it counts however late it comes.
 */
export function jobSupply(
  records: Parameters<typeof goodsStock>[0],
  { job = '', on, useOn }: SuppliedJob,
): (material: string) => Supply {
  return (material) => {
    const now = goodsStock(records, material, { asked: on, use: useOn(material) });
    const ordered = now.lines.reduce((sum, line) => sum + (line.kept.get(job) ?? 0), 0);
    return { stock: (now.kept.get(job) ?? 0) + now.free, coming: ordered + now.comingFree };
  };
}
