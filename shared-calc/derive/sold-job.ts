import type { OrderFault, OrderSums } from '#shared-calc/bench/order-sums.ts';
import { answerOf, takesChanges, worksOtherwise } from '#shared-calc/jobs/house-changes.ts';
import type { JobSheet } from '#shared-calc/jobs/job-sheet.ts';
import {
  changeDifference,
  countDifferences,
  quoteDifferences,
  type QuoteDifference,
} from '#shared-calc/jobs/quote-differences.ts';
import type { SoldHouse } from '#shared-calc/jobs/sold-house.ts';
import { lazy } from '#shared-calc/records/memo.ts';
import type { HouseChange, Job } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';

/** What a sold job stands on, and what of it is not in its quote. */
export interface SoldJob extends SoldHouse {
  /** Ids of changes that it left. */
  readonly left: readonly HouseChange[];
  /** In force since the quote, and not answered; none once it is being built. */
  readonly offered: readonly HouseChange[];
  readonly differs: () => SoldDifference;
}

export interface SoldDifference {
  readonly changed: readonly QuoteDifference[];
  /** `2 boxes, 1 house change`; empty if nothing differs. */
  readonly words: string;
  /** What the price with tax is more than in the quote, in coins; left out while it cannot be worked. */
  readonly coins?: number;
}

interface Parts {
  readonly job: Job;
  readonly house: SoldHouse;
  readonly sheet: JobSheet;
  readonly sums: () => Result<OrderSums, OrderFault>;
}

export function soldJob({ job, house, sheet, sums }: Parts): SoldJob {
  const left = house.since.filter((change) => answerOf(change, job.id)?.answer === 'leave');
  return {
    ...house,
    left,
    offered: takesChanges(job) ? house.since.filter((change) => isOffered(change, job.id, house)) : [],
    differs: lazy(() => {
      const own = quoteDifferences(sheet, house.body);
      const taken = house.taken.map(({ before, after }) => changeDifference(before, after));
      const words = countDifferences(own, taken.length);
      const worked = words === '' ? undefined : sums();
      const coins = worked?.ok ? worked.value.quote.grossCoins - house.body.sums.grossCoins : undefined;
      return {
        changed: [...own, ...taken],
        words,
        ...(words === '' ? { coins: 0 } : coins !== undefined && { coins }),
      };
    }),
  };
}

/** A change that would leave the job as it is offers nothing. */
function isOffered(change: HouseChange, job: string, { linesOf, tanks }: SoldHouse): boolean {
  const { before, after } = change;
  if (answerOf(change, job) || !worksOtherwise(before, after)) return false;
  const tank = change.for?.find((each) => tanks.has(each));
  if (change.for && tank === undefined) return false;
  const lines = linesOf(change.recipe, tank) ?? [];
  const id = (after ?? before)?.id;
  return worksOtherwise(
    lines.find((line) => line.id === id),
    after,
  );
}
