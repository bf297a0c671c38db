import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { BoxContent, Figure } from '#shared-calc/engine/box-content.ts';
import { callInBase } from '#shared-calc/engine/call-function.ts';
import { openGrid } from '#shared-calc/engine/open-grid.ts';
import { readBox } from '#shared-calc/recipe/read-box.ts';
import { scopeOf } from '#shared-calc/recipe/scope.ts';
import { compileRule, type Lookups, type Value } from '#shared-calc/rule/evaluate-rule.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { demoBench, demoRecipes, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const tanks = [...records.tank.keys()];
const functions: Lookups['functions'] = new Map(
  tradeFunctions.filter((each) => each.inRules).map((each) => [each.name, callInBase(each)]),
);

function rule(text: string): BoxContent {
  const read = readRule(text);
  if (!read.ok) throw new Error(JSON.stringify(read.fault));
  return { is: 'rule', rule: read.value };
}

function figure(value: Figure): BoxContent {
  return { is: 'figure', value };
}

/** All results of a grid of one size, by line name. */
function worked(boxes: Readonly<Record<string, BoxContent>>) {
  const grid = openGrid();
  grid.write(Object.entries(boxes).map(([line, content]) => ({ column: 'T07', line, content })));
  const cells = Object.fromEntries(Object.keys(boxes).map((line) => [line, grid.read('T07', line)]));
  grid.close();
  return cells;
}

/** Every line of a size, evaluated without the graph engine. */
function secondWay(bench: Bench, tank: string): ReadonlyMap<string, Value> {
  const { lines } = bench.input();
  const scope = scopeOf(lines);
  const works = new Map<string, () => Value>();
  const known = new Map<string, Value>();
  const valueOf = (name: string): Value => {
    const value = known.get(name) ?? works.get(name)?.() ?? { kind: 'not-a-number' };
    known.set(name, value);
    return value;
  };
  for (const line of lines) {
    const reading = readBox(bench.box(tank, line.name).text, line, scope);
    if (reading.is === 'figure') known.set(line.name, reading.value);
    if (reading.is === 'rule') works.set(line.name, compileRule(reading.rule, { valueOf, functions }));
  }
  return new Map(lines.map((line) => [line.name, valueOf(line.name)]));
}

function agree(one: Value | undefined, other: Value | undefined): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
}

describe('openGrid', () => {
  const houses = [...demoRecipes.map((recipe) => [recipe, 'full'] as const), ['H1', 'basic'], ['H1', 'show']] as const;

  describe.each(houses)('house recipe %s, kit %s', (recipe, kit) => {
    const bench = demoBench({ recipe, sizes: tanks, job: { kit } }, records);
    const names = bench.input().lines.map((line) => line.name);

    test.each(tanks)('every line of %s comes to what the rules alone come to', (tank) => {
      const second = secondWay(bench, tank);
      const apart = names.filter((name) => !agree(bench.box(tank, name).value, second.get(name)));
      expect(apart.map((name) => [name, bench.box(tank, name).value, second.get(name)])).toEqual([]);
    });
  });

  test('figures, words and answers come back as they were put in', () => {
    expect(worked({ a: figure(0.04), b: figure('full'), c: figure(true), d: figure('=1+1'), e: figure("'x") })).toEqual(
      {
        a: { known: true, value: 0.04 },
        b: { known: true, value: 'full' },
        c: { known: true, value: true },
        d: { known: true, value: '=1+1' },
        e: { known: true, value: "'x" },
      },
    );
  });

  test('a rule reads lines that are written after it', () => {
    expect(worked({ both: rule('one + other'), one: figure(2), other: figure(3) })['both']).toEqual({
      known: true,
      value: 5,
    });
  });

  test('what has no value names the first cause, however far away', () => {
    const cells = worked({
      last: rule('middle * 2'),
      middle: rule('first + 1'),
      first: { is: 'nothing', why: 'missing' },
      faulty: { is: 'nothing', why: 'faulty' },
      on_faulty: rule('faulty - 1'),
      in_ring: { is: 'nothing', why: 'loop' },
      on_ring: rule('in_ring - 1'),
      shared: rule('1 / zero'),
      zero: figure(0),
      on_shared: rule('max(shared, 3)'),
      deep: rule('layer_volume(0 m2 - 1 m2, 4 mm)'),
      on_deep: rule('deep + 1 L'),
    });
    const causes = Object.entries(cells).flatMap(([line, box]) => (box.known ? [] : [[line, box.problem]]));
    expect(Object.fromEntries(causes)).toEqual({
      last: { why: 'missing', line: 'first' },
      middle: { why: 'missing', line: 'first' },
      first: { why: 'missing', line: 'first' },
      faulty: { why: 'faulty', line: 'faulty' },
      on_faulty: { why: 'faulty', line: 'faulty' },
      in_ring: { why: 'loop', line: 'in_ring' },
      on_ring: { why: 'loop', line: 'in_ring' },
      shared: { why: 'divided by zero', line: 'shared' },
      on_shared: { why: 'divided by zero', line: 'shared' },
      deep: { why: 'refused', line: 'deep', says: 'Area cannot be below zero.' },
      on_deep: { why: 'refused', line: 'deep', says: 'Area cannot be below zero.' },
    });
  });

  test('if and pick work only the branch that is taken', () => {
    expect(
      worked({
        zero: figure(0),
        kit: figure('full'),
        by_if: rule('if(zero = 0, 1, 1 / zero)'),
        by_pick: rule('pick(kit, "basic", 1 / zero, "full", 2)'),
      }),
    ).toMatchObject({ by_if: { value: 1 }, by_pick: { value: 2 } });
  });

  test('a figure written again works what reads it again', () => {
    const grid = openGrid();
    grid.write([
      { column: 'T07', line: 'twice', content: rule('once * 2') },
      { column: 'T07', line: 'once', content: figure(4) },
    ]);
    const before = grid.read('T07', 'twice');
    grid.write([{ column: 'T07', line: 'once', content: figure(5) }]);
    expect([before, grid.read('T07', 'twice')]).toEqual([
      { known: true, value: 8 },
      { known: true, value: 10 },
    ]);
    grid.close();
  });

  test('a line taken out is gone from every size, and its place may be another line', () => {
    const grid = openGrid();
    for (const column of ['T03', 'T07']) {
      grid.write([
        { column, line: 'old', content: figure(1) },
        { column, line: 'reader', content: rule('other + 1') },
      ]);
    }
    grid.removeLine('old');
    grid.write([{ column: 'T03', line: 'other', content: figure(7) }]);
    expect([grid.read('T03', 'reader'), grid.read('T03', 'old').known, grid.read('T07', 'old').known]).toEqual([
      { known: true, value: 8 },
      false,
      false,
    ]);
    grid.close();
  });

  test('a size taken out leaves the others alone', () => {
    const grid = openGrid();
    for (const column of ['T03', 'T07', 'T08']) grid.write([{ column, line: 'a', content: figure(column) }]);
    grid.removeColumn('T07');
    expect(['T03', 'T07', 'T08'].map((column) => grid.read(column, 'a'))).toEqual([
      { known: true, value: 'T03' },
      { known: false, problem: { why: 'missing', line: 'a' } },
      { known: true, value: 'T08' },
    ]);
    grid.close();
  });

  test('eight hundred sizes side by side each read their own figures', () => {
    const grid = openGrid();
    const columns = Array.from({ length: 800 }, (_, at) => `size ${at}`);
    grid.write(
      columns.flatMap((column, at) => [
        { column, line: 'a', content: figure(at) },
        { column, line: 'b', content: rule('a * 2 + 1') },
      ]),
    );
    const wrong = columns.filter((column, at) => {
      const box = grid.read(column, 'b');
      return !box.known || box.value !== at * 2 + 1;
    });
    expect(wrong).toEqual([]);
    grid.close();
  });

  test('boxes written in any order come to the same', () => {
    const boxes = [
      { column: 'T07', line: 'a', content: figure(3) },
      { column: 'T07', line: 'b', content: rule('a + 1') },
      { column: 'T07', line: 'c', content: rule('a * b') },
      { column: 'T07', line: 'd', content: rule('if(c > 11, c - b, a)') },
    ];
    fc.assert(
      fc.property(fc.shuffledSubarray(boxes, { minLength: 4 }), fc.boolean(), (order, oneByOne) => {
        const grid = openGrid();
        if (oneByOne) for (const each of order) grid.write([each]);
        else grid.write(order);
        const cells = boxes.map(({ line }) => grid.read('T07', line));
        grid.close();
        expect(cells.map((box) => box.known && box.value)).toEqual([3, 4, 12, 8]);
      }),
      { numRuns: 24 },
    );
  });
});
