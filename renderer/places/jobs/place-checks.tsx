import { useMemo } from 'preact/hooks';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import { checksOf } from '#shared-calc/bench/checks.ts';
import type { CheckResult } from '#shared-calc/bench/bench-types.ts';
import { outerSize, placeChecks } from '#shared-calc/jobs/place-checks.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import { sizeFigures } from '#shared-calc/papers/size-figures.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import type { JobPart } from './job-part.ts';

interface Failing extends Pick<CheckResult, 'level' | 'says' | 'decides'> {
  readonly sizes: readonly string[];
}

/** Checks of the job's sizes that do not hold, or are not known yet, the gravest first. */
export function PlaceChecks({ job, context }: JobPart) {
  const failing = useMemo(() => failingChecks({ job, context }), [job, context.records, context.today]);
  if (failing.length === 0) return null;
  return (
    <section>
      <h3>What does not hold there</h3>
      <ul class="checks">
        {failing.map(({ level, says, decides, sizes }) => (
          <li key={`${says} ${sizes.join()}`} data-state={level}>
            <Flag state={level} sign={level}>
              {level}
            </Flag>
            <span>
              <b>{sizes.join(', ')}</b> {readUnits(says, context.display)}
              {decides !== '' && <span class="aside"> {whoDecides(decides)}.</span>}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

const gravity = ['stop', 'watch', 'advice'] as const;

function failingChecks({
  job,
  context: { records, today, display },
}: Pick<JobPart, 'job' | 'context'>): readonly Failing[] {
  const { sheet, bench } = openJob(records, job, today);
  const limitsOf = (key: string) => {
    const { number } = sizeFigures(bench, key, display);
    return placeChecks(
      job,
      outerSize((line) => number(line, 'mm')),
      display,
    );
  };
  const failing = sheet.columns.flatMap(({ key }) =>
    [...checksOf(bench, key, display), ...limitsOf(key)]
      .filter(({ holds }) => holds !== true)
      .map((check) => ({ ...check, key })),
  );
  return [...Map.groupBy(failing, ({ says }) => says).values()]
    .flatMap((same) => {
      const [first] = same;
      return first
        ? [{ level: first.level, says: first.says, decides: first.decides, sizes: same.map(({ key }) => key) }]
        : [];
    })
    .toSorted((one, other) => gravity.indexOf(one.level) - gravity.indexOf(other.level));
}
