import { describe, expect, test } from 'vitest';
import { entryText, hasTwoReadings, writtenText, textInLabel } from '#shared-calc/recipe/typed-text.ts';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

function line(name: string): Line {
  const found = records.line.get(`H1.${name}`);
  if (!found) throw new Error(`no line ${name}`);
  return found;
}

const comma: Display = { ...plainDisplay, decimalComma: true };
const inches: Display = { ...plainDisplay, unitsShown: { length: 'in' } };

describe('writtenText', () => {
  test.each([
    ['15', 'drain_gap', plainDisplay, '15 mm'],
    ['  15 mm ', 'drain_gap', plainDisplay, '15 mm'],
    ['1 1/2', 'drain_gap', inches, '1 1/2 in'],
    ['1/2 in', 'drain_gap', plainDisplay, '1/2 in'],
    ['12', 'drainage_waste', plainDisplay, '12 %'],
    ['3', 'coir_parts', plainDisplay, '3'],
    ['10', 'isopod_founders', plainDisplay, '10'],
    ['12,5 mm', 'drain_gap', comma, '12.5 mm'],
    ['1.288,5', 'drain_gap', comma, '1288.5 mm'],
    ['12.5', 'drain_gap', comma, '12.5 mm'],
    ['drainage / 3', 'drain_gap', comma, 'drainage / 3'],
    ['show', 'kit', plainDisplay, 'show'],
    ['', 'drain_gap', plainDisplay, ''],
  ] as const)('%j in %s is kept as written for any workshop', (typed, name, display, kept) => {
    expect(writtenText(typed, line(name), display)).toBe(kept);
  });
});

describe('hasTwoReadings', () => {
  test('with the comma set, 1.288 may be one or a thousand', () => {
    expect([
      hasTwoReadings('1.288 mm', line('drain_gap'), comma),
      hasTwoReadings('1.288 mm', line('drain_gap'), plainDisplay),
    ]).toEqual([true, false]);
  });
});

describe('entryText', () => {
  test('a figure opens with the sign the workshop writes; a rule keeps its point', () => {
    const rule = { part: 'number', value: 1, from: 0, to: 1 } as const;
    expect([
      entryText({ text: '12.5 mm' }, comma),
      entryText({ text: '12.5 mm' }, plainDisplay),
      entryText({ text: '0.5 * drainage', rule }, comma),
    ]).toEqual(['12,5 mm', '12.5 mm', '0.5 * drainage']);
  });
});

describe('textInLabel', () => {
  test('a figure is named with its unit as it is read', () => {
    expect([
      textInLabel('15 mm', line('drain_gap'), plainDisplay),
      textInLabel('26 degC', line('room_summer'), plainDisplay),
      textInLabel('drainage / 3', line('drain_gap'), plainDisplay),
      textInLabel('', line('drain_gap'), plainDisplay),
    ]).toEqual(['15 mm', '26 °C', 'drainage / 3', 'no figure']);
  });
});
