import { HyperFormula } from 'hyperformula';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { openBench, type LiveBench } from '#shared-calc/bench/open-bench.ts';
import { callInBase } from '#shared-calc/engine/call-function.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { compileRule, type Sum, type Value } from '#shared-calc/rule/evaluate-rule.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { demoBench, demoColumn, demoRecords } from '#tests/demo-bench.ts';
import { measure, ms, ratio, us, type Told } from './measure.ts';

const SIZES = 200;
const records = demoRecords();
const codes = [...records.tank.keys()];
const columns: readonly ColumnInput[] = Array.from({ length: SIZES }, (_, at) => ({
  ...demoColumn(records, codes[at % codes.length] ?? 'T07'),
  key: `C${at}`,
}));

/** The engine over H1 x 200 sizes, compared with a bare operator's cell, the closure evaluator and sums by hand. */
export function benchEngine(): readonly Told[] {
  const start = performance.now();
  const bench = openBench({ ...demoBench({ sizes: [] }, records).input(), columns });
  const build = performance.now() - start;
  const lines = bench.input().lines.length;
  const bare = bareOperator(lines);
  const whole = wholeRecalculation(bench, lines);
  const closures = closureTime(bench);
  const oneEdit = editOneSize(bench);
  const house = editHouse(bench);
  return [
    { what: `build H1 (${lines} lines) x ${SIZES} sizes`, took: ms(build), floor: '', ratio: '', must: '' },
    {
      what: 'a box of H1, worked',
      took: us(whole),
      floor: `bare operator's box ${us(bare)}`,
      ratio: ratio(whole / bare),
      must: 'x 1.50',
    },
    {
      what: 'the same by closures over the tree',
      took: us(closures),
      floor: `engine ${us(whole)}`,
      ratio: ratio(whole / closures),
      must: 'told',
    },
    handWritten(),
    {
      what: 'one edit in one size',
      took: ms(oneEdit.median),
      floor: `95th ${ms(oneEdit.p95)}`,
      ratio: '',
      must: '16 ms, 32 ms',
    },
    withRanges(bench),
    { what: 'house edit, visible columns', took: ms(house.visible), floor: '', ratio: '', must: '16 ms' },
    { what: 'house edit, a slice', took: ms(house.slice), floor: '', ratio: '', must: '16 ms' },
    { what: `house edit, all ${SIZES} sizes`, took: ms(house.all), floor: '', ratio: '', must: '200 ms' },
  ];
}

/** All sizes worked once with the probes of their guesses, beside the same lines without a range. */
function withRanges(bench: LiveBench): Told {
  const { lines, isOldPrice } = bench.input();
  const plain = lines.map(({ least: _least, most: _most, ...line }) => line);
  const worked = (of: readonly Line[]) =>
    measure({ times: 7 }, () => {
      // Other objects, so that nothing is left of the turn before.
      const fresh = columns.map((column) => ({ ...column }));
      const once = onceBench({ lines: of, columns: fresh, job: new Map(), isOldPrice });
      for (const { key } of fresh) once.ranges(key);
    }).median;
  const [likely, ranged] = [worked(plain), worked(lines)];
  return {
    what: `ranges of ${SIZES} sizes`,
    took: ms(ranged),
    floor: `the likely figures alone ${ms(likely)}`,
    ratio: ratio(ranged / likely),
    must: 'x 1.80',
  };
}

/** Microseconds per cell of a grid of products in which each cell reads the one before. */
function bareOperator(lines: number): number {
  const sheet = Array.from({ length: lines }, (_, row) =>
    columns.map((__, column) => (row === 0 ? 1 : `=${letters(column)}${row}*1.0001`)),
  );
  const engine = HyperFormula.buildFromArray(sheet, { licenseKey: 'gpl-v3', smartRounding: false, undoLimit: 0 });
  const { median } = measure({ times: 7 }, (turn) => {
    engine.suspendEvaluation();
    for (const [column] of columns.entries()) engine.setCellContents({ sheet: 0, row: 0, col: column }, turn + 2);
    engine.resumeEvaluation();
  });
  engine.destroy();
  return (median * 1000) / (lines * SIZES);
}

function letters(index: number): string {
  const letter = String.fromCodePoint(65 + (index % 26));
  return index < 26 ? letter : letters(Math.floor(index / 26) - 1) + letter;
}

/** Microseconds per cell of H1 when the length of every tank changes, so that nearly everything is computed again. */
function wholeRecalculation(bench: LiveBench, lines: number): number {
  const worked = bench.input().lines.filter((line) => !['given', 'tank'].includes(line.role)).length;
  const { median } = measure({ times: 7 }, (turn) => {
    const lengths = new Map([
      ['inside_length', `${700 + turn} mm`],
      ['dam_height', `${120 + turn} mm`],
    ]);
    bench.update({ ...bench.input(), job: lengths });
  });
  bench.update({ ...bench.input(), job: new Map() });
  return (median * 1000) / (Math.min(lines, worked) * SIZES);
}

const sums: ReadonlyMap<string, Sum> = new Map(
  tradeFunctions.filter((each) => each.inRules).map((each) => [each.name, callInBase(each) as Sum]),
);

/** Microseconds per cell with closures, each line once in dependency order, over one size. */
function closureTime(bench: LiveBench): number {
  const key = columns[6]?.key ?? '';
  const values = new Map<string, Value>();
  const works = new Map<string, () => Value>();
  for (const line of bench.input().lines) {
    const box = bench.box(key, line.name);
    const lookups = { valueOf: (name: string) => values.get(name) ?? 0, functions: sums };
    if (box.rule) works.set(line.name, compileRule(box.rule, lookups));
    if (box.value !== undefined) values.set(line.name, box.value);
  }
  const { median } = measure({ times: 200 }, () => {
    for (const [name, work] of works) values.set(name, work());
  });
  return (median * 1000) / works.size;
}

/** The stack of a rectangle by hand, in plain TypeScript, compared with the recipe's closures for the same lines. */
function handWritten(): Told {
  const bench = demoBench({ sizes: ['T07'], job: { soil_rise: '0 mm' } }, records);
  const names = ['drainage', 'soil_front', 'soil_gross', 'edge_bead', 'soil_buried', 'soil_placed', 'mix_loose'];
  const by = { length: 0.9, depth: 0.445, dam: 0.15 };
  const hand = measure({ times: 2000 }, (turn) => stackByHand({ ...by, dam: 0.15 + (turn % 2) * 0.01 }));
  const column = bench.input().columns[0];
  if (!column) throw new Error('no column');
  const ours = measure({ times: 200 }, (turn) => {
    const locals = new Map([['dam_height', `${150 + (turn % 2) * 10} mm`]]);
    bench.update({ ...bench.input(), columns: [{ ...column, locals }] });
    for (const name of names) bench.box('T07', name);
  });
  const factor = ours.median / Math.max(hand.median, 1e-5);
  const what = 'a dam edit worked through a whole size';
  return {
    what,
    took: ms(ours.median),
    floor: `stack by hand ${us(hand.median * 1000)}`,
    ratio: ratio(factor),
    must: 'told',
  };
}

function stackByHand({ length, depth, dam }: { length: number; depth: number; dam: number }): number {
  const area = length * depth;
  const drainage = Math.min(0.05, Math.max(0.02, Math.round((0.27 * dam) / 0.005) * 0.005));
  const capping = dam < 0.1 ? 0.006 : 0.01;
  const front = dam - drainage - capping - (dam < 0.1 ? 0.008 : 0.01);
  const bead = 2 * (length + depth) * 0.02 * 0.02 * 0.5;
  const gross = area * front;
  return ((gross - bead - gross * 0.05) / 0.88) * 1.05;
}

function editOneSize(bench: LiveBench) {
  return measure({ times: 60 }, (turn) => {
    const next = columns.slice();
    const first = columns[5];
    if (first) next[5] = { ...first, locals: new Map([['dam_height', `${120 + turn} mm`]]) };
    bench.update({ ...bench.input(), columns: next });
  });
}

function editHouse(bench: LiveBench) {
  const visible = columns.slice(0, 5).map((column) => column.key);
  const took = { visible: [] as number[], slice: [] as number[], all: [] as number[] };
  for (let turn = 0; turn < 9; turn += 1) {
    const kit = ['basic', 'full', 'show'][turn % 3] ?? 'full';
    const lines = bench.input().lines.map((line) => (line.name === 'kit' ? { ...line, text: kit } : line));
    const start = performance.now();
    const rest = bench.update({ ...bench.input(), lines }, visible);
    took.visible.push(performance.now() - start);
    let before = performance.now();
    while (rest()) {
      took.slice.push(performance.now() - before);
      before = performance.now();
    }
    took.all.push(performance.now() - start);
  }
  const middle = (of: number[]) => of.toSorted((a, b) => a - b)[Math.floor(of.length / 2)] ?? 0;
  return { visible: middle(took.visible), slice: middle(took.slice), all: middle(took.all) };
}
