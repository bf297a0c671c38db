import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { missingFigures } from '#shared-calc/bench/waits.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { openBench } from '#shared-calc/bench/open-bench.ts';
import { tankShapes } from '#shared-calc/fields/tank.ts';
import { recipeParts, RecipeAnswers } from '#shared-calc/recipe/recipe-answers.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { mapKinds, type Records, type Tank } from '#shared-calc/records/records.ts';
import { demoColumn, demoRecords } from '#tests/demo-bench.ts';
import { readerFor } from '#shared-calc/bench/box-reader.ts';
import { nameFault } from '#shared-calc/acts/line-fault.ts';
import { misfitOf } from '#shared-calc/records/misfit.ts';
import { findLooseReference } from '#shared-calc/records/references.ts';
import { added } from '#shared-calc/records/change.ts';
import { done, refused } from './do-act.ts';

const demo = demoRecords();

/** A book of one's own: a workshop with its quote groups and rates, and nothing else. */
const empty: Records = {
  ...mapKinds<Records>(() => new Map()),
  workshop: demo.workshop,
  margin: demo.margin,
  taxClass: demo.taxClass,
  rate: demo.rate,
};

const depth = fc.constantFrom<boolean | string>(false, true, '8 mm', '25 mm', '1 in');
const anyAnswers = fc
  .record({
    drainage: depth,
    capping: depth,
    soil: depth,
    litter: depth,
    mesh: fc.boolean(),
    background: fc.boolean(),
    hardscape: fc.boolean(),
    plants: fc.boolean(),
    microfauna: fc.boolean(),
    light: fc.boolean(),
    mist: fc.boolean(),
    mix: fc.array(
      fc.record({
        what: fc.constantFrom('coir', 'bark', 'sand', 'Fine bark', 'Aged pine fines', 'Own soil, sieved', '3 %', 'mm'),
        parts: fc.constantFrom(1, 2.5, '4'),
      }),
      { maxLength: 4 },
    ),
  })
  .map((answers) => RecipeAnswers.parse(answers));

function made(answers: RecipeAnswers, records = empty): Records {
  return done(records, 'makeRecipe', { id: 'R1', title: 'Own', answers }).records;
}

/** One tank of every shape of the demo's tank book. */
const tanks: readonly Tank[] = tankShapes.flatMap(
  (shape) => [...demo.tank.values()].find((tank) => tank.shape === shape && tank.damHeightMm !== undefined) ?? [],
);

describe('makeRecipe', () => {
  test('every recipe of answers is whole: names, uses, rules, references', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const records = made(answers);
        const lines = linesOf(records, 'R1');
        const uses = lines.flatMap(({ use }) => use ?? []);
        expect(new Set(uses).size).toBe(uses.length);
        expect(new Set(lines.map(({ name }) => name)).size).toBe(lines.length);
        const reader = readerFor(lines);
        expect(lines.filter((line) => reader.read(line, line.text).is === 'faulty')).toEqual([]);
        expect(lines.flatMap((line) => nameFault([], line) ?? misfitOf(added('line', line), records) ?? [])).toEqual(
          [],
        );
        expect(lines.flatMap((line) => findLooseReference(records, [added('line', line)]) ?? [])).toEqual([]);
        expect(
          lines.filter(
            ({ role, material = '' }) => role === 'need' && material !== 'TANK' && !records.material.has(material),
          ),
        ).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  test('its bench works for every shape of tank: what has no answer waits for a figure that nobody gave', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const records = made(answers);
        const lines = linesOf(records, 'R1');
        const columns = tanks.map((tank) => demoColumn({ ...records, tank: demo.tank }, tank.id));
        const bench = onceBench({ lines, columns, job: new Map(), isOldPrice: () => false });
        const wrong = columns.flatMap(({ key }) =>
          lines.flatMap(({ name }) => {
            const { value, cause } = bench.box(key, name);
            if (value !== undefined || cause?.why === 'missing') return [];
            return cause?.why === 'waits' && cause.problem.why === 'missing' ? [] : [[key, name, cause]];
          }),
        );
        expect(wrong).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  test('with every figure given a quote of it lacks none', () => {
    const answers = RecipeAnswers.parse({
      ...Object.fromEntries(recipeParts.map((part) => [part, true])),
      drainage: '40 mm',
      capping: '10 mm',
      litter: '30 mm',
      mix: [
        { what: 'coir', parts: 3 },
        { what: 'bark', parts: 2 },
      ],
    });
    const records = { ...made(answers), tank: demo.tank };
    const species = { species_ceiling: '27 degC', species_floor: '18 degC', band_low: '70 %', band_high: '95 %' };
    const place = {
      altitude: '650 m',
      room_summer: '26 degC',
      room_winter: '20 degC',
      room_lowest: '16 degC',
      humidity_summer: '55 %',
      humidity_winter: '40 %',
      shelf_rating: '100 kg',
    };
    const job = new Map([...Object.entries({ ...species, ...place }), ['dip_allowed', '10 %']]);
    const bench = openBench({
      lines: linesOf(records, 'R1'),
      columns: [demoColumn(records, 'T07')],
      job,
      isOldPrice: () => false,
    });
    expect(missingFigures(bench, 'T07')).toEqual([]);
    // 0.4005 m2 x 40 mm, and 2 % settle, 3 % waste: as by hand for H1 with that depth.
    const byHouse = openBench({
      lines: linesOf(demo, 'H1'),
      columns: [demoColumn(demo, 'T07', { drainage: '40 mm' })],
      job,
      isOldPrice: () => false,
    });
    expect(bench.box('T07', 'drainage_need').value).toBe(byHouse.box('T07', 'drainage_need').value);
  });

  test('what the answers do not name is not in it, nor are its goods and its checks', () => {
    const bare = made(RecipeAnswers.parse({ soil: true, mix: [{ what: 'Sieved loam', parts: 1 }] }));
    const names = linesOf(bare, 'R1').map(({ name }) => name);
    expect(names.filter((name) => /drain|mesh|capping|litter|lamp|mist|panel|plant|springtail/.test(name))).toEqual([]);
    expect([...bare.material.values()].map(({ label, supplier }) => [label, supplier])).toContainEqual([
      'Sieved loam',
      undefined,
    ]);
    expect(bare.packPrice.size).toBe(0);
  });

  test('a figure is read as it is typed, and one that cannot be is refused', () => {
    const inches = made(RecipeAnswers.parse({ litter: '1 in' }));
    expect(inches.line.get('R1.litter')?.text).toBe('1 in');
    const litter = 'deep';
    expect(refused(empty, 'makeRecipe', { title: 'Own', answers: RecipeAnswers.parse({ litter }) })).toContain('deep');
  });
});
