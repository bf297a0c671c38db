import type { CheckResult } from '#shared-calc/bench/bench-types.ts';
import type { DerivedJob } from './derived.ts';

export interface FailingCheck extends Pick<CheckResult, 'level' | 'says' | 'decides'> {
  readonly sizes: readonly string[];
}

const gravity = ['stop', 'watch', 'advice'] as const;

/** Checks of the job's sizes and of its place that do not hold, or are not known yet, most serious first. */
export function failingChecks({ keys, checks, place }: DerivedJob): readonly FailingCheck[] {
  const failing = keys.flatMap((key) =>
    [...checks(key), ...place(key)]
      .filter(({ state }) => state !== 'holds')
      .map(({ level, says, decides }) => ({ level, says, decides, key })),
  );
  return [...Map.groupBy(failing, ({ says }) => says)]
    .flatMap(([says, same]) => {
      const [first] = same;
      return first ? [{ level: first.level, says, decides: first.decides, sizes: same.map(({ key }) => key) }] : [];
    })
    .toSorted((one, other) => gravity.indexOf(one.level) - gravity.indexOf(other.level));
}
