import { describe, expect, test } from 'vitest';
import { entryText, writtenText, textInLabel, withShownUnit } from '#shared-calc/recipe/typed-text.ts';
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
const fahrenheitComma: Display = { ...comma, unitsShown: { temperature: 'degF' } };
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
    ['1,250.5', 'drain_gap', plainDisplay, '1250.5 mm'],
    ["1'250 mm", 'drain_gap', plainDisplay, '1250 mm'],
    ['-1 250,5', 'room_summer', comma, '-1250.5 degC'],
    ['6,7', 'light_warming_up', fahrenheitComma, '6.7 F_deg'],
    ['max(1; 2,5 mm)', 'drain_gap', plainDisplay, 'max(1; 2,5 mm)'],
    ['drainage / 3', 'drain_gap', comma, 'drainage / 3'],
    ['show', 'kit', plainDisplay, 'show'],
    ['', 'drain_gap', plainDisplay, ''],
  ] as const)('%j in %s is kept as written for any workshop', (typed, name, display, kept) => {
    expect(writtenText(typed, line(name), display)).toEqual({ ok: true, value: kept });
  });

  test.each([
    ['1.288 mm', comma, { kind: 'two-readings', text: '1.288', readings: ['1288', '1,288'] }],
    ['1,288 mm', plainDisplay, { kind: 'two-readings', text: '1,288', readings: ['1288', '1.288'] }],
    ['12.5', comma, { kind: 'other-sign', text: '12.5', sign: 'comma', like: '12,5' }],
    ['0,900 m', plainDisplay, { kind: 'other-sign', text: '0,900', sign: 'point', like: '0.900' }],
  ] as const)('%j is never guessed at', (typed, display, fault) => {
    expect(writtenText(typed, line('drain_gap'), display)).toEqual({ ok: false, fault });
  });
});

describe('withShownUnit', () => {
  test.each([
    ['12,5', comma, '12,5 mm'],
    ['1 250', plainDisplay, '1 250 mm'],
    ['1 1/2', inches, '1 1/2 in'],
    ['3/0', plainDisplay, '3/0'],
    ['drainage / 2', plainDisplay, 'drainage / 2'],
  ] as const)('%j is given the unit that is seen, and keeps its signs', (typed, display, text) => {
    expect(withShownUnit(typed, line('drain_gap'), display)).toBe(text);
  });
});

describe('entryText', () => {
  test('a figure opens with the sign the workshop writes; a rule keeps its point and is parted by ;', () => {
    expect([
      entryText('12.5 mm', comma),
      entryText('12.5 mm', plainDisplay),
      entryText('0.5 * drainage', comma),
      entryText('max(1.5,2, pick(kit, "a,b", 2))', comma),
      entryText('max(1.5,2)', plainDisplay),
    ]).toEqual(['12,5 mm', '12.5 mm', '0.5 * drainage', 'max(1.5; 2; pick(kit; "a,b"; 2))', 'max(1.5,2)']);
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
