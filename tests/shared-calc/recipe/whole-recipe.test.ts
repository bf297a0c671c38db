import { describe, expect, test } from 'vitest';
import { runAct, type Act } from '#shared-calc/acts/act.ts';
import { put, remove } from '#shared-calc/acts/book-acts.ts';
import { addLine, changeLine, moveLine, removeLine, renameLine, writeLine } from '#shared-calc/acts/recipe-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { linesFor, linesOf } from '#shared-calc/recipe/lines-of.ts';
import { withLineFor } from '#shared-calc/recipe/write-lines.ts';
import type { Line, Recipe, Records } from '#shared-calc/records/records.ts';
import { doneAndBack as done, refusedOrDone as refused } from '#tests/shared-calc/acts/do-act.ts';
import { DEMO_DAY, demoColumn, demoRecipes, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

function withChild(from: Records, id: string, parent: string): Records {
  const child: Recipe = { id, title: `Child of ${parent}`, note: '', parent };
  return { ...from, recipe: new Map(from.recipe).set(id, child) };
}

const family = withChild(withChild(records, 'H5', 'H1'), 'H6', 'H5');

const run = (act: Act, input: unknown, from: Records) => runAct(act, derive(from, DEMO_DAY), input);

function line(from: Records, recipe: string, name: string): Line {
  const found = linesOf(from, recipe).find((each) => each.name === name);
  if (!found) throw new Error(`no line ${name} in ${recipe}`);
  return found;
}

const bare = (each: Line) => ({ ...each, id: '', recipe: '' });

function figures(from: Records, recipe: string, tank: string): readonly unknown[] {
  const lines = linesFor(from, recipe, tank);
  const bench = onceBench({ lines, columns: [demoColumn(from, tank)], job: new Map(), isOldPrice: () => false });
  return lines.map(({ name }) => [name, bench.box(tank, name).value]);
}

describe('a recipe with a parent', () => {
  test.each(demoRecipes)(
    'of %s, without differences, is as its parent, line by line and figure by figure',
    (parent) => {
      const from = withChild(records, 'H5', parent);
      expect(linesOf(from, 'H5').map(bare)).toEqual(linesOf(from, parent).map(bare));
      for (const tank of records.tank.keys()) expect(figures(from, 'H5', tank)).toEqual(figures(from, parent, tank));
    },
  );

  test('an edit of an inherited line is a difference, and the parent stays; written back, there is none', () => {
    const after = done(writeLine, { line: 'H5.drain_gap', text: '15 mm' }, family);
    expect([line(after, 'H1', 'drain_gap').text, line(after, 'H5', 'drain_gap').text]).toEqual(['10 mm', '15 mm']);
    expect(line(after, 'H6', 'drain_gap').text).toBe('15 mm');
    expect(after.line).toEqual(family.line);
    const { text, source, sourceNote } = line(family, 'H1', 'drain_gap');
    const back = done(
      changeLine,
      { line: 'H5.drain_gap', fields: { source, sourceNote } },
      done(writeLine, { line: 'H5.drain_gap', text }, after),
    );
    expect(back.difference.size).toBe(0);
  });

  test('what the child does not change of a line follows the parent', () => {
    const own = done(writeLine, { line: 'H5.drain_gap', text: '15 mm' }, family);
    const after = done(changeLine, { line: 'H1.drain_gap', fields: { note: 'Room for the pump.', high: 90 } }, own);
    expect(line(after, 'H6', 'drain_gap')).toMatchObject({ text: '15 mm', note: 'Room for the pump.', high: 90 });
  });

  test('a line that is added, left out or moved in the child is so there alone', () => {
    const added = done(addLine, { recipe: 'H5', after: 'drain_gap' }, family);
    const names = (from: Records, recipe: string) => linesOf(from, recipe).map((each) => each.name);
    expect(names(added, 'H6')[names(added, 'H6').indexOf('drain_gap') + 1]).toBe('figure');
    expect(names(added, 'H1')).not.toContain('figure');
    const without = done(removeLine, { line: 'H5.lift_filled' }, added);
    expect([names(without, 'H1').includes('lift_filled'), names(without, 'H6').includes('lift_filled')]).toEqual([
      true,
      false,
    ]);
    const moved = done(moveLine, { line: 'H5.drain_gap', to: 'up' }, without);
    const at = (recipe: string) => names(moved, recipe).indexOf('drain_gap') - names(moved, recipe).indexOf('drainage');
    expect([at('H5') - at('H1')]).not.toEqual([0]);
    expect(linesOf(moved, 'H5').every(({ order }, nth, all) => nth === 0 || (all[nth - 1]?.order ?? '') < order)).toBe(
      true,
    );
  });

  test('lines that parent and child add at one place both stand there', () => {
    const both = done(addLine, { recipe: 'H5', after: 'drain_gap' }, family);
    const named = done(renameLine, { line: 'H5.figure', name: 'pump_room' }, both);
    const after = done(addLine, { recipe: 'H1', after: 'drain_gap' }, named);
    const orders = linesOf(after, 'H5').map(({ order }) => order);
    expect(new Set(orders).size).toBe(orders.length);
    expect(linesOf(after, 'H5').map(({ name }) => name)).toEqual(expect.arrayContaining(['pump_room', 'figure']));
    expect(run(moveLine, { line: 'H5.figure', to: 'up' }, after).ok).toBe(true);
  });

  test('a line of the parent is renamed through the rules of all that inherit it, and only there', () => {
    const own = done(writeLine, { line: 'H5.drain_gap', text: 'drainage / 4' }, family);
    const after = done(renameLine, { line: 'H1.drainage', name: 'clay_depth' }, own);
    expect(line(after, 'H6', 'drain_gap').text).toBe('clay_depth / 4');
    expect(line(after, 'H5', 'clay_depth').label).toBe(line(family, 'H1', 'drainage').label);
    expect(refused(renameLine, { line: 'H5.drainage', name: 'depth' }, after)).toBe(
      'clay_depth has its name from H1: rename it there. Its name in words may be another in H5.',
    );
  });

  test('an edit of the parent that a child could not be read with is refused, with the child named', () => {
    const added = done(addLine, { recipe: 'H5', after: 'drain_gap' }, family);
    const named = done(renameLine, { line: 'H5.figure', name: 'pump_room' }, added);
    const reads = done(writeLine, { line: 'H5.figure', text: 'drain_gap + 5 mm' }, named);
    expect(refused(changeLine, { line: 'H1.drain_gap', fields: { unit: 'L' } }, reads)).toMatch(/would break/);
    expect(refused(writeLine, { line: 'H1.drain_gap', text: 'pump_room' }, reads)).toMatch(/Nothing called pump_room/);
    expect(refused(renameLine, { line: 'H1.drainage', name: 'pump_room' }, reads)).toBe(
      'In H5: There is a line called pump_room already.',
    );
    const crossed = done(writeLine, { line: 'H5.capping', text: 'drain_gap' }, family);
    expect(refused(writeLine, { line: 'H1.drain_gap', text: 'capping' }, crossed)).toMatch(
      /^In H5: .*depends on itself/,
    );
  });

  test('a line that a child changes, and a recipe that has children, stay', () => {
    const own = done(changeLine, { line: 'H5.lift_filled', fields: { note: 'By two.' } }, family);
    expect(refused(removeLine, { line: 'H1.lift_filled' }, own)).toMatch(/needed for recipe H5: it changes it\./);
    const gone = done(removeLine, { line: 'H1.lift_filled', anyway: true }, own);
    expect([gone.difference.size, linesOf(gone, 'H6').some(({ name }) => name === 'lift_filled')]).toEqual([0, false]);
    expect(refused(remove, { kind: 'recipe', id: 'H5' }, family)).toMatch(/H6/);
  });

  test('no recipe inherits from itself, nor has more than four parents above it', () => {
    const h1 = records.recipe.get('H1');
    expect(refused(put, { kind: 'recipe', record: { ...h1, parent: 'H6' } }, family)).toBe(
      'H1 cannot inherit from H6: H6 inherits from it.',
    );
    const deep = withChild(withChild(family, 'H7', 'H6'), 'H8', 'H7');
    const child = (parent: string) => ({ kind: 'recipe', record: { id: 'H9', title: 'Deep', note: '', parent } });
    expect(refused(put, child('H8'), deep)).toBe('H9 would have more than 4 parents above it.');
    expect(refused(put, child('H7'), deep)).toBe('done');
  });
});

describe('a line that is otherwise for some tanks', () => {
  const fifth = withLineFor(family, { ...line(family, 'H1', 'litter'), text: '45 mm' }, ['T01']);

  test('is so for them, in every recipe that inherits it, and all other tanks share one list', () => {
    for (const recipe of ['H1', 'H5', 'H6']) {
      const texts = [...records.tank.keys()].map((tank) => [
        tank,
        linesFor(fifth, recipe, tank).find(({ name }) => name === 'litter')?.text,
      ]);
      expect(texts.filter(([, text]) => text === '45 mm')).toEqual([['T01', '45 mm']]);
      expect(linesFor(fifth, recipe, 'T02')).toBe(linesOf(fifth, recipe));
      expect(figures(fifth, recipe, 'T02')).toEqual(figures(family, recipe, 'T02'));
    }
  });

  test('tanks with the same difference share one, and back at the usual there is none', () => {
    const both = withLineFor(fifth, { ...line(family, 'H1', 'litter'), text: '45 mm' }, ['T03']);
    expect([...both.difference.values()].map((mark) => mark.for)).toEqual([['T01', 'T03']]);
    expect(linesFor(both, 'H1', 'T01')).toBe(linesFor(both, 'H1', 'T03'));
    expect(withLineFor(both, line(family, 'H1', 'litter'), ['T01', 'T03']).difference.size).toBe(0);
  });

  test('a child that writes the line itself has its own for every tank', () => {
    const own = done(writeLine, { line: 'H5.litter', text: '60 mm' }, fifth);
    expect(linesFor(own, 'H5', 'T01').find(({ name }) => name === 'litter')?.text).toBe('60 mm');
  });
});
