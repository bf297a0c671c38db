import { describe, expect, test } from 'vitest';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { houseTextOf, joinRange, splitRange } from '#shared-calc/recipe/range-text.ts';
import { readBox } from '#shared-calc/recipe/read-box.ts';
import { scopeOf } from '#shared-calc/recipe/scope.ts';
import { entryText, textInLabel, writtenText } from '#shared-calc/recipe/typed-text.ts';
import { ok } from '#shared-calc/result.ts';
import { sayBoxFault } from '#shared-calc/words/say-box-cause.ts';
import { demoBench } from '#tests/demo-bench.ts';

const { lines } = demoBench({ sizes: [] }).input();
const scope = scopeOf(lines);
const lineOf = (name: string) => {
  const line = lines.find((each) => each.name === name);
  if (!line) throw new Error(`no line ${name}`);
  return line;
};

describe('the range of a guess', () => {
  test.each([
    ['mix_settle', '12 % (8 to 18 %)', [0.12, 0.08, 0.18]],
    ['mix_settle', '12 % (8 to 18)', [0.12, 0.08, 0.18]],
    ['mix_settle', '12 (8 to 18)', [0.12, 0.08, 0.18]],
    ['mix_settle', '8..18 %, likely 12 %', [0.12, 0.08, 0.18]],
    ['coir_parts', '1 (0.5 to 2)', [1, 0.5, 2]],
    ['coir_parts', '0.5..2, likely 1', [1, 0.5, 2]],
    ['room_summer', '23 degC (68 degF to 80.6 degF)', [23, 20, 27]],
    ['litter', '40 mm (3 to 6 cm)', [0.04, 0.03, 0.06]],
  ])('%s takes %s', (name, text, [likely, least, most]) => {
    const reading = readBox(text, lineOf(name), scope);
    const figures = reading.is === 'figure' ? [reading.value, reading.range?.least, reading.range?.most] : [];
    expect(figures.map((each) => Number(Number(each).toFixed(12)))).toEqual([likely, least, most]);
  });

  test.each([
    ['8..18 %, likely 12 %', '12 % (8 to 18 %)'],
    ['12 % (8 to 18)', '12 % (8 to 18 %)'],
    ['0.5..2, likely 1', '1 (0.5 to 2)'],
    ['40 mm (3 cm to 6 cm)', '40 mm (3 cm to 6 cm)'],
  ])('%s is written back as %s', (typed, written) => {
    const range = splitRange(typed);
    expect(range && joinRange(range)).toBe(written);
  });

  test.each([
    ['12 % (18 to 8 %)', 'Write the range in order, the least first: 18 %, likely 12 %, most 8 % are not.'],
    ['20 % (8 to 18 %)', 'Write the range in order, the least first: 8 %, likely 20 %, most 18 % are not.'],
    [
      'mix_waste (8 to 18 %)',
      'Only a figure has a range: mix_waste (8 to 18 %). A rule takes its range from the figures it reads.',
    ],
  ])('%s is refused with its cure', (text, says) => {
    const reading = readBox(text, lineOf('mix_settle'), scope);
    expect(reading.is === 'faulty' && sayBoxFault(reading.fault, 'mix_settle')).toBe(says);
  });

  test('a bare range gets the unit that the line is shown in', () => {
    expect(writtenText('30 (20 to 45)', lineOf('litter'), plainDisplay)).toEqual(ok('30 mm (20 to 45 mm)'));
    expect(writtenText('1 (0.5 to 2)', lineOf('coir_parts'), plainDisplay)).toEqual(ok('1 (0.5 to 2)'));
  });

  test('an end with two readings, or with the other decimal sign, is asked for', () => {
    const written = (text: string) => {
      const read = writtenText(text, lineOf('springtail_target'), plainDisplay);
      return read.ok ? read.value : sayBoxFault(read.fault, '');
    };
    expect([written('9000 (8,000 to 10000)'), written('0.9 (0,8 to 1)')]).toEqual([
      '8,000 can be read in two ways: 8000 or 8?',
      'Here the decimal sign is the point: 0.8',
    ]);
  });

  test('it is typed and shown with the comma of the workshop, and stored with a point', () => {
    const comma = { ...plainDisplay, decimalComma: true };
    const stored = writtenText('1,5 (0,5 to 2,5)', lineOf('coir_parts'), comma);
    expect(stored).toEqual(ok('1.5 (0.5 to 2.5)'));
    expect(entryText('1.5 (0.5 to 2.5)', comma)).toBe('1,5 (0,5 to 2,5)');
    expect(textInLabel('12 % (8 to 18 %)', lineOf('mix_settle'), plainDisplay)).toBe('12 % (8 % to 18 %)');
  });

  test('the house shows its guess with its range', () => {
    expect(houseTextOf({ ...lineOf('mix_settle'), text: '12 %', least: 8, most: 18 })).toBe('12 % (8 to 18 %)');
    expect(houseTextOf({ ...lineOf('coir_parts'), text: '1', least: 0.5, most: 2 })).toBe('1 (0.5 to 2)');
  });
});
