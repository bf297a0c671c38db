import { describe, expect, test } from 'vitest';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { workingOf } from '#shared-calc/rule/working.ts';

const lines: Readonly<Record<string, readonly [string, string]>> = {
  soil_gross: ['36.045 L', 'soil before taking off'],
  edge_bead: ['0.538 L', 'edge bead'],
  soil_buried: ['1.802 L', 'buried'],
  panel_displaced: ['0.000 L', 'displaced by the background'],
  soil_front: ['-5 mm', 'front depth'],
  dam_height: ['150 mm', 'dam'],
  floor_area: ['0.4005 m2', 'floor area'],
  drainage: ['40 mm', 'drainage'],
  tank_mass: ['30.22 kg', 'tank'],
  top_mass: ['2 kg', 'top frame'],
  kit: ['full', 'kit level'],
};

const titles: Readonly<Record<string, string>> = { layer_volume: 'Layer volume' };

function working(text: string, resultText: string, between: ',' | ';' = ','): readonly string[] {
  const rule = readRule(text);
  if (!rule.ok) throw new Error(JSON.stringify(rule.fault));
  return workingOf(rule.value, {
    figureOf: (name) => lines[name]?.[0] ?? '?',
    labelOf: (name) => lines[name]?.[1] ?? name,
    resultText,
    titleOf: (fn) => titles[fn],
    between,
    literalText: (value, unit) => (unit === 'number' ? `${value}` : `${value} ${unit}`),
  });
}

describe('workingOf', () => {
  test('where the decimal comma is set, ; stands between the figures of a function', () => {
    expect(working('layer_volume(floor_area, drainage)', '16,02 L', ';')).toEqual([
      'layer_volume(0.4005 m2; 40 mm) = 16,02 L',
      'Layer volume of 0.4005 m2 floor area; 40 mm drainage = 16,02 L',
    ]);
  });

  test.each([
    ['dam_height / 3', '50 mm', ['150 mm / 3 = 50 mm']],
    [
      'soil_gross - edge_bead - soil_buried',
      '33.705 L',
      ['36.045 L - 0.538 L - 1.802 L = 33.705 L', '36.045 L less 0.538 L edge bead less 1.802 L buried = 33.705 L'],
    ],
    [
      'soil_gross - (edge_bead - soil_buried)',
      '37.309 L',
      ['36.045 L - (0.538 L - 1.802 L) = 37.309 L', '36.045 L less 0.538 L edge bead plus 1.802 L buried = 37.309 L'],
    ],
    [
      'tank_mass + top_mass',
      '32.22 kg',
      ['30.22 kg + 2 kg = 32.22 kg', '30.22 kg tank plus 2 kg top frame = 32.22 kg'],
    ],
    [
      'sum(tank_mass, top_mass)',
      '32.22 kg',
      ['sum(30.22 kg, 2 kg) = 32.22 kg', '30.22 kg tank plus 2 kg top frame = 32.22 kg'],
    ],
    [
      'layer_volume(floor_area, drainage)',
      '16.02 L',
      ['layer_volume(0.4005 m2, 40 mm) = 16.02 L', 'Layer volume of 0.4005 m2 floor area, 40 mm drainage = 16.02 L'],
    ],
    ['drainage - soil_front', '45 mm', ['40 mm - (-5 mm) = 45 mm', '40 mm less -5 mm front depth = 45 mm']],
    ['-soil_front * (1 + 12 %)', '5.6 mm', ['-(-5 mm) * (1 + 12 %) = 5.6 mm']],
    ['drainage', '40 mm', ['40 mm', '40 mm drainage = 40 mm']],
    ['650 m', '650 m', ['650 m']],
    ['pick(kit, "basic", 0, "full", 1)', '1', ['pick(full, "basic", 0, "full", 1) = 1']],
    ['drainage + 5 mm', '45 mm', ['40 mm + 5 mm = 45 mm', '40 mm drainage plus 5 mm = 45 mm']],
  ])('tells how %s comes to %s', (text, result, told) => {
    expect(working(text, result)).toEqual(told);
  });
});
