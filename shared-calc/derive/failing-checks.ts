import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { CheckResult } from '#shared-calc/bench/bench-types.ts';
import { checksOf } from '#shared-calc/bench/checks.ts';
import { missingFigures, sayMissing, type MissingFigure } from '#shared-calc/bench/waits.ts';
import type { PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Derived, DerivedJob } from './derived.ts';

export interface FailingCheck extends Pick<CheckResult, 'level' | 'state' | 'says' | 'decides'> {
  readonly sizes: readonly string[];
  /** Only advice in the recipe, even while it may not hold. */
  readonly isAdvice: boolean;
  /** The line without a figure that checks wait for, in its first size. */
  readonly missing?: string;
}

const gravity = ['stop', 'watch', 'advice'] as const;

/** An order whose checks are asked for; one without a job has no place. */
export interface CheckedOrder {
  readonly bench: Bench;
  readonly keys: readonly string[];
  readonly place?: (key: string) => readonly PlaceCheck[];
}

/** Checks of the job's sizes and of its place that do not hold, or are not known yet, most serious first. */
export function failingChecks({ display }: Pick<Derived, 'display'>, worked: DerivedJob): readonly FailingCheck[] {
  return openChecks(worked, display);
}

/** The same for any order. Checks that wait for one figure are one entry, as grave as the gravest of them. */
export function openChecks(order: CheckedOrder, display: Display): readonly FailingCheck[] {
  const open = order.keys.flatMap((key) => openIn(order, key, display).map((check) => ({ ...check, key })));
  return [...Map.groupBy(open, ({ says }) => says).values()]
    .flatMap((same) => {
      const [first] = same;
      if (!first) return [];
      const { key: _, ...check } = first;
      return [{ ...check, sizes: same.map(({ key }) => key) }];
    })
    .toSorted((one, other) => gravity.indexOf(one.level) - gravity.indexOf(other.level));
}

function openIn({ bench, place }: CheckedOrder, key: string, display: Display): readonly Omit<FailingCheck, 'sizes'>[] {
  const limits = place?.(key) ?? [];
  const known = checksOf(bench, key, display).filter(({ state }) => state !== 'not known yet');
  return [
    ...[...known, ...limits]
      .filter(({ state }) => state !== 'holds')
      .map((check) => {
        const { level, state, says, decides } = check;
        return { level, state, says, decides, isAdvice: ('line' in check ? check.line : check).level === 'advice' };
      }),
    ...missingFigures(bench, key).map(waitingOn),
  ];
}

function waitingOn(missing: MissingFigure): Omit<FailingCheck, 'sizes'> {
  const level = gravity.find((each) => missing.checks.some((check) => check.level === each)) ?? 'watch';
  const state = 'not known yet';
  return {
    level,
    state,
    says: sayMissing(missing),
    decides: '',
    isAdvice: level === 'advice',
    missing: missing.line.name,
  };
}
