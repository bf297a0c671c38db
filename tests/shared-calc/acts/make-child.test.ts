import { describe, expect, test } from 'vitest';
import { copyRecipe } from '#shared-calc/acts/copy-recipe.ts';
import { forkRecipe } from '#shared-calc/acts/family-acts.ts';
import { houseLog } from '#shared-calc/acts/house-acts.ts';
import { makeChild } from '#shared-calc/acts/make-child.ts';
import { addLine, moveLine, removeLine, renameLine, writeLine } from '#shared-calc/acts/recipe-acts.ts';
import { writeLineFor } from '#shared-calc/acts/tank-line-acts.ts';
import { lineMarks } from '#shared-calc/recipe/family-marks.ts';
import { linesFor, linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { doneAndBack as done, refusedOrDone as refused } from '#tests/shared-calc/acts/do-act.ts';
import { demoRecipes, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

/** A copy of H1 as a workshop would have it: some lines otherwise, one more, one gone, one moved, one for a tank. */
const steps: readonly (readonly [Parameters<typeof done>[0], unknown])[] = [
  [copyRecipe, { recipe: 'H1' }],
  [writeLine, { line: 'H5.litter', text: '20 mm' }],
  [addLine, { recipe: 'H5', after: 'drain_gap', label: 'Room for the pump' }],
  [writeLine, { line: 'H5.room_for_the_pump', text: 'drain_gap + 5 mm' }],
  [removeLine, { line: 'H5.lift_filled' }],
  [moveLine, { line: 'H5.capping', to: 'up' }],
  [writeLineFor, { line: 'H5.capping', tanks: ['T03'], text: '12 mm' }],
];
const copied = steps.reduce((from, [act, input]) => done(act, input, from), records);

/** All lines of a recipe for every tank, as they are read, shown and worked. */
function whole(from: Records, recipe: string): readonly unknown[] {
  const told = (tank: string) => linesFor(from, recipe, tank).map((line) => ({ ...line, order: '' }));
  return [...from.tank.keys()].map((tank) => [tank, told(tank)]);
}

const marksOf = (from: Records, recipe = 'H5') => lineMarks(from, recipe).map(({ name, is }) => [name, is]);

describe('makeChild', () => {
  const child = done(makeChild, { recipe: 'H5', parent: 'H1', who: 'R-builder' }, copied);

  test('a whole copy becomes a child that holds only what differs, and every line stays as it was', () => {
    expect(child.recipe.get('H5')?.parent).toBe('H1');
    expect(whole(child, 'H5')).toEqual(whole(copied, 'H5'));
    expect(marksOf(child)).toEqual([
      ['room_for_the_pump', 'added'],
      ['capping', 'changed'],
      ['litter', 'changed'],
      ['lift_filled', 'left out'],
    ]);
    expect([...child.line.values()].filter(({ recipe }) => recipe === 'H5').map(({ name }) => name)).toEqual([
      'room_for_the_pump',
    ]);
  });

  test('its log says it, and no line of it', () => {
    expect(houseLog(child, 'H5').filter((each) => !copied.houseChange.has(each.id))).toMatchObject([
      { how: 'join', of: 'H1', by: 'R-builder' },
    ]);
  });

  test('a change of the parent then reaches the lines that are equal, and no other', () => {
    const moved = ['drain_gap', 'litter'].reduce(
      (from, name) => done(writeLine, { line: `H1.${name}`, text: '17 mm' }, from),
      child,
    );
    const text = (name: string) => linesOf(moved, 'H5').find((line) => line.name === name)?.text;
    expect([text('drain_gap'), text('litter')]).toEqual(['17 mm', '20 mm']);
  });

  test('what the parent has for a tank does not reach a copy that had it as for the others', () => {
    const always = done(writeLineFor, { line: 'H1.litter', tanks: ['T01'], text: '55 mm' }, copied);
    const own = done(writeLineFor, { line: 'H1.drainage', tanks: ['T01', 'T03'], text: '90 mm' }, always);
    expect(whole(done(makeChild, { recipe: 'H5', parent: 'H1' }, own), 'H5')).toEqual(whole(copied, 'H5'));
  });

  test('recipes below it are as they were, and a line that only shares a name or a code is its own', () => {
    const below = done(forkRecipe, { recipe: 'H5', id: 'H6' }, copied);
    const own = done(writeLine, { line: 'H6.capping', text: '9 mm' }, below);
    const added = done(addLine, { recipe: 'H1', after: 'soil_front', label: 'Room for the pump' }, own);
    const other = done(renameLine, { line: 'H1.room_for_the_pump', name: 'sump' }, added);
    const same = done(addLine, { recipe: 'H1', after: 'sump', label: 'Room for the pump' }, other);
    const after = done(makeChild, { recipe: 'H5', parent: 'H1' }, same);
    for (const recipe of ['H5', 'H6']) expect(whole(after, recipe)).toEqual(whole(same, recipe));
  });

  test.each(demoRecipes.slice(1))('%s as a child of H1 has every line as before', (recipe) => {
    const after = done(makeChild, { recipe, parent: 'H1' }, records);
    expect(whole(after, recipe)).toEqual(whole(records, recipe));
    const had = [...records.line.values()].filter((line) => line.recipe === recipe).length;
    const has = [...after.line.values()].filter((line) => line.recipe === recipe).length;
    expect(has).toBeLessThan(had / 3);
  });

  test('a child stays with its parent, and no recipe is the child of what inherits from it', () => {
    expect(refused(makeChild, { recipe: 'H5', parent: 'H2' }, child)).toBe('H5 is a child of H1 already.');
    expect(refused(makeChild, { recipe: 'H1', parent: 'H5' }, child)).toBe(
      'H1 cannot inherit from H5: H5 inherits from it.',
    );
    expect(refused(makeChild, { recipe: 'H2', parent: 'H2' }, child)).toBe(
      'H2 cannot inherit from H2: H2 inherits from it.',
    );
  });
});
