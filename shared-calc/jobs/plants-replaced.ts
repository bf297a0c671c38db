import type { Workshop } from '#shared-calc/records/records.ts';

/** The workshop's promise by kit, in days; a kit without days has none. */
export type PlantsPromise = Pick<Workshop, 'plantsBasicDays' | 'plantsFullDays' | 'plantsShowDays'>;

/**
 * Days within which plants that die are replaced once, for a job whose sizes have these kits: the longest, as one
 * sentence covers the whole job. None if any size has no promise, for it would get that of the others.
 */
export function plantsReplacedDays(kits: readonly string[], promise: PlantsPromise): number | undefined {
  const byKit = new Map([
    ['basic', promise.plantsBasicDays],
    ['full', promise.plantsFullDays],
    ['show', promise.plantsShowDays],
  ]);
  const days = kits.map((kit) => byKit.get(kit));
  const known = days.filter((each) => each !== undefined);
  return known.length === 0 || known.length < days.length ? undefined : Math.max(...known);
}
