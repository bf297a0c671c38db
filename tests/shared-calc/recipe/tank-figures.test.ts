import { describe, expect, test } from 'vitest';
import { tankFigures } from '#shared-calc/recipe/tank-figures.ts';
import { recordKinds, type Tank } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const measurements = [...records.line.values()]
  .filter((line) => line.recipe === 'H1' && line.role === 'tank')
  .flatMap((line) => line.use ?? []);

function bare(shape: Tank['shape'], more: Partial<Tank> = {}): Tank {
  return recordKinds.tank.parse({ id: 'T99', label: 'New', shape, clientsOwn: false, note: '', ...more });
}

describe('tankFigures', () => {
  test.each([...records.tank.values()])('$id has every measurement that a recipe asks for', (tank) => {
    const figures = tankFigures(tank);
    expect(measurements.filter((use) => (figures.get(use) ?? '') === '')).toEqual([]);
  });

  test('a tank with nothing measured leaves every box empty but what its shape does not have', () => {
    expect(Object.fromEntries(tankFigures(bare('rectangle')))).toEqual({
      tankShape: 'rectangle',
      insideLength: '',
      insideDepth: '',
      insideHeight: '',
      frontBow: '0 mm',
      sideReturn: '0 mm',
      damHeight: '',
      frontVent: '',
      glass: '',
      baseGlass: '',
    });
  });

  test.each(['hexagon', 'corner', 'cylinder'] as const)('a %s is as deep as it is long', (shape) => {
    expect(tankFigures(bare(shape, { insideLengthMm: 400 })).get('insideDepth')).toBe('400 mm');
  });

  test('a bow without its bow, and a corner without its return, wait to be measured', () => {
    expect(tankFigures(bare('bow')).get('frontBow')).toBe('');
    expect(tankFigures(bare('corner')).get('sideReturn')).toBe('');
  });

  test('a figure of zero is measured', () => {
    expect(tankFigures(bare('rectangle', { frontVentMm: 0 })).get('frontVent')).toBe('0 mm');
  });
});
