import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { flyStarts } from '#shared-calc/trade/cultures/fly-starts.ts';
import { flyTubs } from '#shared-calc/trade/cultures/fly-tubs.ts';
import { answered } from './tub-ways.ts';

/** Share of fly tubs that fail. */
const FLY_LOSS = 0.1;
const WEEK = 7;

export interface FlyWish {
  readonly kind: CultureKind;
  readonly aWeek: number;
  /** The first day of the first week; left out: today. */
  readonly from?: Day;
}

export interface FlyShelf {
  /** Tubs of flies to set up each week, and tubs on the shelf at once; 0 if no flies are wanted. */
  readonly flyStarts: number;
  readonly flyTubs: number;
  /** The first week takes more at once: one tub gives only a week's part of its flies in a week. */
  readonly flyFirst?: { readonly tubs: number; readonly on: Day };
}

export function flyShelf(wish: FlyWish | undefined, on: Day): Result<FlyShelf, string> {
  if (!wish || wish.aWeek === 0) return ok({ flyStarts: 0, flyTubs: 0 });
  const { kind, aWeek, from = on } = wish;
  const starts = answered(flyStarts.compute([aWeek, kind.yield, FLY_LOSS]));
  if (!starts.ok) return starts;
  const { productiveDays = 0, firstHarvestDays } = kind;
  if (productiveDays === 0) return failed(`${kind.label} is no kind of flies: it has no productive days.`);
  const tubs = answered(flyTubs.compute([starts.value, firstHarvestDays, productiveDays]));
  if (!tubs.ok) return tubs;
  const aWeekEach = kind.yield * (1 - FLY_LOSS) * Math.min(1, WEEK / productiveDays);
  return ok({
    flyStarts: starts.value,
    flyTubs: tubs.value,
    flyFirst: { tubs: countUp(aWeek / aWeekEach), on: addDays(from, -firstHarvestDays) },
  });
}
