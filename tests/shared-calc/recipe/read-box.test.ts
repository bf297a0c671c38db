import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { readBox, type BoxReading } from '#shared-calc/recipe/read-box.ts';
import { scopeOf } from '#shared-calc/recipe/scope.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

const { lines } = demoBench({ sizes: [] }, demoRecords()).input();
const scope = scopeOf(lines);

function lineOf(name: string): Line {
  const line = lines.find((each) => each.name === name);
  if (!line) throw new Error(`no line ${name}`);
  return line;
}

function read(name: string, text: string): BoxReading {
  return readBox(text, lineOf(name), scope);
}

/** The figure in the line's own unit, or whatever else was parsed. */
function figure(name: string, text: string) {
  const reading = read(name, text);
  if (reading.is !== 'figure') return reading.is;
  const { value } = reading;
  return typeof value === 'number' ? Number(fromBase(value, unitOf(lineOf(name).unit)).toPrecision(12)) : value;
}

describe('readBox', () => {
  test.each([
    ['litter', '40', 40],
    ['litter', '40 mm', 40],
    ['litter', ' 4 cm ', 40],
    ['litter', '1/2 in', 12.7],
    ['litter', '1 1/2 in', 38.1],
    ['litter', '-5 mm', -5],
    ['drainage_settle', '12', 12],
    ['drainage_settle', '12 %', 12],
    ['drainage_settle', '0.12 share', 12],
    ['reservoir', '2 gal', 7.570823568],
    ['room_summer', '23', 23],
    ['room_summer', '73.4 degF', 23],
    ['shelf_rating', '220 lb', 99.7903214],
    ['springtail_target', '8 000', 8000],
    ['springtail_target', '8,000.0', 8000],
    ['coir_parts', '3', 3],
  ])('%s takes %s as %d in its own unit', (name, text, value) => {
    expect(figure(name, text)).toBe(value);
  });

  test.each([
    ['kit', 'show', 'show'],
    ['kit', '"show"', 'show'],
    ['public_site', 'yes', true],
    ['public_site', 'No', false],
    ['public_site', 'true', true],
    ['drain_access', 'tap', 'tap'],
    ['tank_shape', 'bow', 'bow'],
  ])('%s takes %s as a word', (name, text, value) => {
    expect(figure(name, text)).toBe(value);
  });

  test('a word that is none of the choices is told with the nearest', () => {
    expect(read('kit', 'shwo')).toEqual({
      is: 'faulty',
      fault: { kind: 'not-an-option', text: 'shwo', options: ['basic', 'full', 'show'], near: 'show' },
    });
  });

  test.each(['', '   ', '\t'])('%j is a figure that is missing', (text) => {
    expect(read('litter', text)).toEqual({ is: 'missing' });
  });

  test.each([
    ['drainage', 'capping * 4'],
    ['drainage', '1/2 * capping'],
    ['drainage', 'if(kit = "show", 50 mm, 40 mm)'],
    ['kit', 'if(public_site, "show", "full")'],
    ['public_site', 'shelf_rating > 100 kg'],
    ['kit', 'kit'],
    ['room_summer', 'room_winter + 2 K'],
    ['coir_parts', '2 + 1'],
    ['coir_parts', 'bark_parts * 150 %'],
  ])('%s takes %s as a rule', (name, text) => {
    expect(read(name, text).is).toBe('rule');
  });

  test.each([
    ['litter', '40 L', 'wrong-kind-for-line', 0],
    ['litter', 'drainage_need', 'wrong-kind-for-line', 0],
    ['room_summer', '3 K', 'wrong-kind-for-line', 0],
    ['drainage', 'capping + edge_bead', 'cannot-join', 0],
    ['drainage', '2 * dam_hieght', 'unknown-name', 4],
    ['drainage', 'layer_volum(floor_area, 4 mm)', 'unknown-function', 0],
    ['drainage', '4 mmm', 'unknown-unit', 2],
    ['drainage', '12,5 mm', 'other-sign', undefined],
    ['drainage', '2 * 12,5 mm', 'unexpected', 6],
    ['springtail_target', '8,000', 'two-readings', undefined],
    ['delivery_distance', '0,125 km', 'other-sign', undefined],
    ['public_site', 'perhaps', 'unknown-name', 0],
    ['kit', '3', 'not-an-option', undefined],
  ])('%s with %s: %s, at %s', (name, text, kind, from) => {
    const reading = read(name, text);
    const fault = reading.is === 'faulty' ? reading.fault : undefined;
    const first = fault?.kind === 'rule' ? fault.faults[0] : undefined;
    expect([first?.kind ?? fault?.kind, first?.from]).toEqual([kind, from]);
  });

  test('every unit of a kind may be entered, and comes to the same length', () => {
    const lengths = ['mm', 'cm', 'm', 'km', 'in', 'ft'];
    fc.assert(
      fc.property(fc.constantFrom(...lengths), fc.integer({ min: 0, max: 1_000_000 }), (unit, thousandths) => {
        const amount = thousandths / 1000;
        const reading = read('litter', `${amount} ${unit}`);
        expect(reading).toEqual({ is: 'figure', value: toBase(amount, unitOf(unit)) });
      }),
    );
  });

  test('no text stops it: it is a figure, a rule, missing or faulty', () => {
    const some = fc.oneof(fc.string({ unit: 'grapheme' }), fc.constantFrom(...lines.map((line) => line.text)));
    fc.assert(
      fc.property(fc.constantFrom(...lines), some, (line, text) => {
        expect(['figure', 'rule', 'missing', 'faulty']).toContain(readBox(text, line, scope).is);
      }),
      { numRuns: 400 },
    );
  });
});
