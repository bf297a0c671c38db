import { describe, expect, test } from 'vitest';
import { growthSpec } from '#renderer/curves/growth-spec.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const { cultureKind } = demoRecords();

function kindOf(id: string): CultureKind {
  const kind = cultureKind.get(id);
  if (!kind) throw new Error(id);
  return kind;
}

describe('growthSpec', () => {
  test('a tub of white springtails settles at 3,194, from 3,005 at the first harvest', () => {
    const spec = growthSpec(kindOf('C1'), false);
    expect([spec?.title, spec?.table.rows.slice(0, 4)]).toEqual([
      'One tub of White springtail settles at 3,194 every 14 days',
      [
        ['0', '', '', '1,250'],
        ['28', '6,010', '3,005', '3,005'],
        // 16,000 / (1 + (16,000 / 3,005 - 1) e^-0.98) = 6,100
        ['42', '6,100', '3,050', '3,050'],
        ['56', '6,169', '3,085', '3,085'],
      ],
    ]);
  });

  // The sustained harvests of the culture book: 2,657, 233 and 119.
  test.each([
    ['C2', '2,657'],
    ['C3', '233'],
    ['C4', '119'],
  ])('%s settles at %s', (id, settled) => {
    expect(growthSpec(kindOf(id), false)?.title).toContain(`settles at ${settled} every`);
  });

  test('ticks stand where something happens: the start and each harvest', () => {
    expect(growthSpec(kindOf('C3'), false)?.across.ticks).toEqual([0, 90, 120, 150, 180, 210, 240, 270]);
  });

  test('fly tubs are used up: there is nothing to draw', () => {
    expect(growthSpec(kindOf('C5'), false)).toBeUndefined();
  });

  test('a workshop that writes a decimal comma reads its thousands with a point', () => {
    expect(growthSpec(kindOf('C1'), true)?.title).toContain('3.194');
  });
});
