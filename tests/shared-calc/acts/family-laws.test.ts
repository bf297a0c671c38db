import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runAct, type Act } from '#shared-calc/acts/act.ts';
import { copyRecipe } from '#shared-calc/acts/copy-recipe.ts';
import { forkRecipe, sendToParent, takeFromParent } from '#shared-calc/acts/family-acts.ts';
import { makeChild } from '#shared-calc/acts/make-child.ts';
import { addLine, changeLine, moveLine, removeLine, renameLine, writeLine } from '#shared-calc/acts/recipe-acts.ts';
import { writeLineFor } from '#shared-calc/acts/tank-line-acts.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { recipeDiff } from '#shared-calc/derive/recipe-diff.ts';
import { lineMarks, tankMarks } from '#shared-calc/recipe/family-marks.ts';
import { descendantsOf } from '#shared-calc/recipe/family.ts';
import { linesFor, linesOf } from '#shared-calc/recipe/lines-of.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import { doneAndBack as done } from '#tests/shared-calc/acts/do-act.ts';
import { DEMO_DAY, demoColumn, demoRecords } from '#tests/demo-bench.ts';

/** Some of the worked lines of H4 with all that they read, so that many books can be tried. */
function smallBook(): Records {
  const records = demoRecords();
  const lines = new Map(linesOf(records, 'H4').map((line) => [line.name, line]));
  const kept = new Set([...lines.values()].filter(({ role }, at) => role === 'worked' && at % 5 === 0));
  for (const { text } of kept) {
    const rule = readRule(text);
    for (const name of rule.ok ? namesIn(rule.value) : []) {
      const read = lines.get(name);
      if (read) kept.add(read);
    }
  }
  const { recipe: known } = records;
  const h4 = new Map([...known].filter(([id]) => id === 'H4'));
  return { ...records, recipe: h4, line: new Map([...kept].map((line) => [line.id, line])) };
}

/** H4 with a child, its child and theirs, and a second child: five recipes deep, as deep as a family may be. */
const family = (
  [
    ['H4', 'H5'],
    ['H5', 'H6'],
    ['H6', 'H7'],
    ['H7', 'H8'],
    ['H4', 'H9'],
  ] as const
).reduce((from, [recipe, id]) => done(forkRecipe, { recipe, id }, from), smallBook());

const recipes = ['H4', 'H5', 'H6', 'H7', 'H8', 'H9'] as const;
const tanks = ['T01', 'T03', 'T07'] as const;
const given = linesOf(family, 'H4')
  .filter(({ role, options }) => role === 'given' && !options)
  .map(({ name }) => name);
const anyLine = linesOf(family, 'H4').map(({ name }) => name);

const recipe = fc.constantFrom(...recipes);
/** In the unit of the line. */
const figure = fc.integer({ min: 1, max: 90 }).map(String);
const some = fc.subarray([...tanks], { minLength: 1 });
type Step = readonly [act: Act, input: (from: Records) => unknown];

const idOf = (from: Records, of: string, name: string) =>
  linesOf(from, of).find((line) => line.name === name)?.id ?? `${of}.${name}`;

const step: fc.Arbitrary<Step> = fc.oneof(
  fc
    .tuple(recipe, fc.constantFrom(...given), figure)
    .map(([of, name, text]): Step => [writeLine, (from) => ({ line: idOf(from, of, name), text })]),
  fc
    .tuple(recipe, fc.constantFrom(...given), some, figure)
    .map(([of, name, on, text]): Step => [writeLineFor, (from) => ({ line: idOf(from, of, name), tanks: on, text })]),
  fc
    .tuple(recipe, fc.constantFrom(...anyLine), fc.constantFrom('Sump', 'Grid height'))
    .map(([of, after, label]): Step => [addLine, () => ({ recipe: of, after, label })]),
  fc
    .tuple(recipe, fc.constantFrom(...anyLine))
    .map(([of, name]): Step => [removeLine, (from) => ({ line: idOf(from, of, name) })]),
  fc
    .tuple(recipe, fc.constantFrom(...anyLine), fc.string({ unit: 'grapheme-ascii', maxLength: 5 }))
    .map(([of, name, note]): Step => [changeLine, (from) => ({ line: idOf(from, of, name), fields: { note } })]),
  fc
    .tuple(recipe, fc.constantFrom(...anyLine), fc.constantFrom('up', 'down'))
    .map(([of, name, to]): Step => [moveLine, (from) => ({ line: idOf(from, of, name), to })]),
  fc
    .tuple(recipe, fc.constantFrom('sump', 'grid_height', ...given), fc.constantFrom('pool', 'sump'))
    .map(([of, name, to]): Step => [renameLine, (from) => ({ line: idOf(from, of, name), name: to })]),
);
const steps = fc.array(step, { minLength: 3, maxLength: 12 });

/** The book with an act done, or as it is where the act is refused. */
function tried(from: Records, act: Act, input: unknown): Records {
  const made = runAct(act, derive(from, DEMO_DAY), input);
  return made.ok ? applyChange(from, made.value) : from;
}

function written(all: readonly Step[], from: Records = family): Records {
  return all.reduce((now, [act, input]) => tried(now, act, input(now)), from);
}

/** The lines of a recipe on each tank, by name and in order; an id and a sort key may be others. */
function whole(from: Records, of: string): readonly (readonly Line[])[] {
  return tanks.map((tank) => linesFor(from, of, tank).map((line) => ({ ...line, id: '', recipe: '', order: '' })));
}

/** The same, whatever the order: a line that was moved may stand elsewhere once it is the parent's. */
function wholeByName(from: Records, of: string): readonly ReadonlyMap<string, Line>[] {
  return whole(from, of).map((lines) => new Map(lines.map((line) => [line.name, line])));
}

function figures(from: Records, of: string): readonly unknown[] {
  return tanks.map((tank) => {
    const lines = linesFor(from, of, tank);
    const bench = onceBench({ lines, columns: [demoColumn(from, tank)], job: new Map(), isOldPrice: () => false });
    return lines.map(({ name }) => [name, bench.box(tank, name).value]);
  });
}

const LAW = { numRuns: 8 };

describe('a family of recipes, whatever is written in it', () => {
  test('a new child has every line and every figure of its parent, on every tank', () => {
    fc.assert(
      fc.property(steps, fc.constantFrom('H4', 'H5', 'H6', 'H7', 'H9'), (all, parent) => {
        const now = written(all);
        const after = tried(now, forkRecipe, { recipe: parent, id: 'H10' });
        expect(whole(after, 'H10')).toEqual(whole(now, parent));
        expect(figures(after, 'H10')).toEqual(figures(now, parent));
      }),
      LAW,
    );
  });

  test('all differences taken from the parent, nothing is left to send up but what it adds', () => {
    fc.assert(
      fc.property(steps, fc.constantFrom('H5', 'H6', 'H7'), (all, of) => {
        const now = written(all);
        const names = [...lineMarks(now, of), ...tankMarks(now, of)].flatMap(({ is, name }) =>
          is === 'added' ? [] : name,
        );
        const made = runAct(takeFromParent, derive(now, DEMO_DAY), { recipe: of, lines: names, tanks: 'take' });
        if (!made.ok) return;
        const after = applyChange(now, made.value);
        expect(lineMarks(after, of).filter(({ is }) => is !== 'added')).toEqual([]);
        expect(tankMarks(after, of).filter(({ line }) => !after.line.has(line))).toEqual([]);
        const parent = after.recipe.get(of)?.parent ?? '';
        const told = recipeDiff({ records: after, recipe: parent }, { records: after, recipe: of });
        expect(told.filter(({ change }) => change !== 'added')).toEqual([]);
      }),
      LAW,
    );
  });

  test('sent up, the recipe and all below it are as before on every tank but for the place of moved lines, and nothing is left to take', () => {
    fc.assert(
      fc.property(steps, fc.constantFrom('H5', 'H6', 'H7'), fc.constantFrom('stay', 'same'), (all, of, how) => {
        const now = written(all);
        const made = runAct(sendToParent, derive(now, DEMO_DAY), { recipe: of, tanks: how });
        if (!made.ok) return;
        const after = applyChange(now, made.value);
        for (const each of [of, ...descendantsOf(now, of)]) {
          expect(wholeByName(after, each)).toEqual(wholeByName(now, each));
        }
        expect(lineMarks(after, of)).toEqual([]);
        const parent = after.recipe.get(of)?.parent ?? '';
        // What stays is for some tanks alone, or what the parent has for them that the recipe had not.
        expect([how, tankMarks(after, of).length > 0 || sameData(whole(after, parent), whole(after, of))]).toEqual([
          how,
          true,
        ]);
      }),
      LAW,
    );
  });

  test('a change of a recipe reaches each below it that has the line as it had, and no other', () => {
    fc.assert(
      fc.property(
        steps,
        fc.constantFrom('H4', 'H5', 'H6'),
        fc.constantFrom(...given),
        figure,
        (all, of, name, text) => {
          const now = written(all);
          const after = tried(now, writeLine, { line: idOf(now, of, name), text });
          const line = (from: Records, each: string) => linesOf(from, each).find((one) => one.name === name);
          for (const each of descendantsOf(now, of)) {
            const parent = now.recipe.get(each)?.parent ?? '';
            const own = lineMarks(now, each).find((mark) => mark.name === name);
            const isOwn = own !== undefined && (own.is !== 'changed' || own.mark?.fields.text !== undefined);
            expect(line(after, each)?.text).toBe((isOwn ? line(now, each) : line(after, parent))?.text);
          }
        },
      ),
      LAW,
    );
  });

  test('a whole copy of any of them, made a child of any other, is as before on every tank', () => {
    fc.assert(
      fc.property(steps, recipe, recipe, steps, (all, of, parent, more) => {
        const now = written(more, tried(written(all), copyRecipe, { recipe: of }));
        const made = runAct(makeChild, derive(now, DEMO_DAY), { recipe: 'H10', parent });
        if (!made.ok) return;
        const after = applyChange(now, made.value);
        for (const each of [...recipes, 'H10']) expect(whole(after, each)).toEqual(whole(now, each));
        expect(figures(after, 'H10')).toEqual(figures(now, 'H10'));
      }),
      LAW,
    );
  });
});
