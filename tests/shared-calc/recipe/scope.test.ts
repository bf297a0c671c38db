import { describe, expect, test } from 'vitest';
import { kindOfLine, noLines, scopeOf } from '#shared-calc/recipe/scope.ts';
import { sayKind } from '#shared-calc/quantity/kind.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

const { lines } = demoBench({ sizes: [] }, demoRecords()).input();
const scope = scopeOf(lines);

function kindName(name: string): string | undefined {
  const kind = scope.kindOfLine(name);
  return kind && sayKind(kind);
}

describe('scopeOf', () => {
  test('rules may name every line, each of its own kind', () => {
    expect(scope.lineNames).toEqual(lines.map((line) => line.name));
    expect(
      ['litter', 'floor_area', 'soil_placed', 'room_summer', 'light_warming_up', 'plants', 'air_open'].map(kindName),
    ).toEqual(['length', 'area', 'volume', 'temperature', 'temperature step', 'count', 'yes_no']);
    expect(scope.kindOfLine('nobody')).toBeUndefined();
  });

  test('rules may call the functions that have a name in rules, and no others', () => {
    const named = tradeFunctions.filter((each) => each.inRules).map((each) => each.name);
    expect([...scope.functions.keys()]).toEqual(named);
    expect(scope.functions.has('PACK_MIX')).toBe(false);
  });
});

describe('kindOfLine', () => {
  test('a choice knows its words where the line lists them', () => {
    const kit = lines.find((line) => line.name === 'kit');
    expect(kit && kindOfLine(kit)).toEqual({ is: 'choice', options: ['basic', 'full', 'show'] });
  });
});

describe('noLines', () => {
  test('a rule that stands alone may name nothing', () => {
    expect([noLines.lineNames, noLines.kindOfLine('litter')]).toEqual([[], undefined]);
  });
});
