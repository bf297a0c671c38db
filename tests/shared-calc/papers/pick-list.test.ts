import { describe, expect, test } from 'vitest';
import { pickLists } from '#shared-calc/papers/pick-list.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

describe('pickLists', () => {
  const records = demoRecords();
  const bench = demoBench({ sizes: ['T07'], job: { soil_rise: '0 mm', delivery_distance: '36 km' } }, records);
  const [list] = pickLists(bench, records, plainDisplay);

  test('everything to have ready, in the order of use; the van is driven, not packed', () => {
    const sections = [...new Set(list?.rows.map((row) => row.section))];
    expect(sections).toEqual(
      [
        'Tank',
        'Drainage',
        'Soil',
        'Hardscape and panel',
        'Plants',
        'Microfauna',
        'Litter',
        'Cover and air',
        'Light',
        'Mist and water',
      ].toSpliced(2, 0, 'Capping'),
    );
    expect(list?.rows.some((row) => row.line === 'delivery_need')).toBe(false);
  });

  test('each with its amount for one build, where it is and who brings it', () => {
    const row = (line: string) => list?.rows.find((each) => each.line === line);
    expect(row('drainage_need')).toEqual({
      section: 'Drainage',
      line: 'drainage_need',
      label: 'Expanded clay, loose',
      material: 'Expanded clay 8-16 mm',
      amount: '16.84\u00a0L',
      from: 'Store',
      brings: 'Builder',
    });
    expect([row('cutting_need')?.from, row('springtails_need')?.brings, row('tank_need')?.material]).toEqual([
      'Glass cutter',
      'Grower',
      'Rectangle 900 × 445 × 600',
    ]);
  });

  test('what a kit does not need is left out', () => {
    expect(list?.rows.some((row) => row.line === 'fan_need')).toBe(false);
  });
});
