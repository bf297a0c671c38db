import { describe, expect, test } from 'vitest';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { demoRecipes } from '#tests/demo-bench.ts';
import { everyView } from '#tests/every-view.ts';
import { asBefore, renamed, withJobOf } from '#tests/rename-lines.ts';

describe.each(demoRecipes)('a line of %s by another name', (recipe) => {
  const { records, job } = withJobOf(recipe, ['T07']);
  const before = asBefore(everyView(records, job));

  test.each(linesOf(records, recipe))('$name: no figure, drawing, date, card or caution changes', (line) => {
    expect(asBefore(everyView(renamed(records, line), job))).toEqual(before);
  });
});
