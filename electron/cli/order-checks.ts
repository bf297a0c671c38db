import type { CheckState } from '#shared-calc/bench/bench-types.ts';
import { answerOfState } from '#shared-calc/bench/check-state.ts';
import { checksOf } from '#shared-calc/bench/checks.ts';
import { missingFigures, sayMissing } from '#shared-calc/bench/waits.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import type { WorkedOrder } from './work-order.ts';

/** The checks of a size as `--json` gives them: those of the recipe, then the limits of the place. */
export function jsonChecks({ bench, place, workshop }: WorkedOrder, key: string): readonly Record<string, unknown>[] {
  const checks = checksOf(bench, key, displayOf(workshop)).map(({ line, level, state, badIn, says, decides }) => ({
    line: line.name,
    level,
    ...answered(state),
    badIn,
    says,
    decides,
  }));
  const limits = place(key).map(({ use, level, state, says, decides }) => ({
    use,
    line: null,
    level,
    ...answered(state),
    badIn: [],
    says,
    decides,
  }));
  return [...checks, ...limits];
}

function answered(state: CheckState) {
  return { holds: answerOfState(state) ?? null, state };
}

/** A sentence for each check of a size that does not surely hold; those that wait for one figure are one. */
export function checkNotes({ bench, workshop }: WorkedOrder, key: string): readonly string[] {
  const open = checksOf(bench, key, displayOf(workshop)).filter(
    ({ state }) => state !== 'holds' && state !== 'not known yet',
  );
  return [
    ...open.map(({ level, says, decides }) => `${key}  ${level}: ${says} ${whoDecides(decides)}.`),
    ...missingFigures(bench, key).map((missing) => `${key}  ${sayMissing(missing)}`),
  ];
}

/** A sentence for each limit of the place that does not surely hold, once for all sizes that it says the same of. */
export function placeNotes({ place, order }: WorkedOrder): readonly string[] {
  const open = order.columns.flatMap(({ key }) =>
    place(key)
      .filter(({ state }) => state !== 'holds')
      .map((check) => ({ ...check, key })),
  );
  return [...Map.groupBy(open, ({ says }) => says)].flatMap(([says, same]) => {
    const [first] = same;
    if (!first) return [];
    const called = first.state === 'not known yet' ? first.state : first.level;
    return [`${same.map(({ key }) => key).join(', ')}  ${called}: ${says} ${whoDecides(first.decides)}.`];
  });
}

/** The checks of every size of an order, each with its size. */
export function orderChecks(worked: WorkedOrder): readonly Record<string, unknown>[] {
  return worked.order.columns.flatMap(({ key }) => jsonChecks(worked, key).map((check) => ({ size: key, ...check })));
}

/** The notes of every size under a table, with a line between. */
export function orderNotes(worked: WorkedOrder): readonly string[] {
  const notes = [...worked.order.columns.flatMap(({ key }) => checkNotes(worked, key)), ...placeNotes(worked)];
  return notes.length === 0 ? [] : ['', ...notes];
}
