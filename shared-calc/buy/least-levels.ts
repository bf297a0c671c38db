import type { Day } from '#shared-calc/calendar/day.ts';
import type { Material, Records } from '#shared-calc/records/records.ts';
import { NOTHING, stock, type LedgerRecords } from './ledger.ts';

export interface UnderLeast {
  readonly material: Material;
  /** Free in the store on the day. */
  readonly free: number;
  /** What is missing up to the level that it is filled to. */
  readonly buy: number;
}

/** Materials that are under their least level on a day; `lent` is what others take of the free stock. */
export function underLeast(
  records: LedgerRecords & Pick<Records, 'material'>,
  on: Day,
  lent: (material: string) => number = () => 0,
): readonly UnderLeast[] {
  return [...records.material.values()].flatMap((material) => {
    const { id, least, upTo } = material;
    if (least === undefined) return [];
    const now = stock(records, id, { asked: on });
    const ordered = now.lines.reduce((sum, { loose }) => sum + loose, 0);
    const left = now.free + ordered - lent(id);
    const fill = Math.max(least, upTo ?? least);
    return least - left > NOTHING ? [{ material, free: now.free, buy: fill - left }] : [];
  });
}
