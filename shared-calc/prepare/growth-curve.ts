import type { CultureKind } from '#shared-calc/records/records.ts';
import { growCount } from '#shared-calc/trade/cultures/grow-count.ts';

export interface GrowthPoint {
  /** Since the tub was started. */
  readonly day: number;
  readonly animals: number;
}

/**
 * Animals in a tub day by day from its founders, with its share harvested from its first harvest on. A harvest day has
 * two points, before and after. Empty for flies, whose tubs are used up.
 */
export function growthCurve(kind: CultureKind, days: number): readonly GrowthPoint[] {
  if (kind.ratePerDay === undefined || kind.founders > kind.capacity) return [];
  const points: GrowthPoint[] = [{ day: 0, animals: kind.founders }];
  let animals = kind.founders;
  for (let day = 1; day <= days; day += 1) {
    animals = nextDay(animals, kind.capacity, kind.ratePerDay);
    points.push({ day, animals });
    if (!isHarvest(kind, day)) continue;
    animals *= 1 - kind.harvestShare;
    points.push({ day, animals });
  }
  return points;
}

function nextDay(animals: number, room: number, rate: number): number {
  const grown = growCount.compute([animals, room, rate, 1]);
  return typeof grown === 'number' ? grown : animals;
}

function isHarvest({ firstHarvestDays, harvestEveryDays }: CultureKind, day: number): boolean {
  return day >= firstHarvestDays && (day - firstHarvestDays) % harvestEveryDays === 0;
}
