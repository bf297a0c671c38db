import { linesRead } from '#shared-calc/bench/rests-on.ts';
import { placeUses, type PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import { givenBy } from '#shared-calc/jobs/survey-given.ts';
import { openQuestions, type SurveyQuestion } from '#shared-calc/jobs/survey-questions.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { DerivedJob } from './derived.ts';

/** A question that nobody asked, and how many checks of all sizes wait for it or rest on a guess of the house. */
export interface WaitingQuestion extends SurveyQuestion {
  readonly checks: number;
}

/** What nobody asked for a job, most checks first. */
export function waitingQuestions({ job, keys, bench, place }: DerivedJob): readonly WaitingQuestion[] {
  const limits = keys.flatMap((key) => place(key)).filter(({ state }) => state === 'not known yet');
  const reads = keys.flatMap((key) => {
    const lines = bench.lines(key);
    const checks = lines.filter(({ role }) => role === 'check');
    return checks.map(({ name }) => ({ lines, names: linesRead(bench, key, name) }));
  });
  return openQuestions(job.survey)
    .map((question) => {
      const waiting = limits.filter(({ use }) => use === question.use).length;
      const use = givenBy[question.key]?.use;
      const isRead = ({ lines, names }: (typeof reads)[number]) => names.has((use && lineFor(lines, use)?.name) ?? '');
      const reading = reads.filter(isRead).length;
      return { ...question, checks: waiting + reading };
    })
    .toSorted((one, other) => other.checks - one.checks);
}

/** A limit of the place that the answers settle, with the sizes that it says the same of. */
export interface SettledLimit extends PlaceCheck {
  readonly sizes: readonly string[];
}

/** The limits that the answers settle. */
export function settledLimits({ keys, place }: DerivedJob): readonly SettledLimit[] {
  const settled = keys.flatMap((key) =>
    place(key)
      .filter(({ use, state }) => isOfPlace(use) && state !== 'not known yet')
      .map((check) => ({ ...check, key })),
  );
  return [...Map.groupBy(settled, ({ use, says }) => `${use} ${says}`).values()].flatMap((same) => {
    const [first] = same;
    if (!first) return [];
    const { key: _, ...check } = first;
    return [{ ...check, sizes: same.map(({ key }) => key) }];
  });
}

/** Limits of the animals are not asked at the place. */
function isOfPlace(use: PlaceCheck['use']): boolean {
  return placeUses.some((each) => each === use);
}
