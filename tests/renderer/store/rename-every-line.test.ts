import { describe, expect, test } from 'vitest';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { demoRecipes } from '#tests/demo-bench.ts';
import { everyView } from '#tests/every-view.ts';
import { asBefore, renamed, withJobOf } from '#tests/rename-lines.ts';

function inState(records: Records, id: string, state: Job['state']): Records {
  const job = records.job.get(id);
  return job ? { ...records, job: new Map(records.job).set(id, { ...job, state }) } : records;
}

describe.each(demoRecipes)('every line of %s by another name', (recipe) => {
  const { records, job } = withJobOf(recipe, ['T03', 'T07']);
  const others = linesOf(records, recipe).reduce(renamed, records);

  test.each(['enquiry', 'deposit in', 'watching'] as const)(
    'changes no figure, drawing, date, card or caution of a job that is %s',
    (state) => {
      const before = asBefore(everyView(inState(records, job, state), job));

      expect(asBefore(everyView(inState(others, job, state), job))).toEqual(before);
    },
  );
});
