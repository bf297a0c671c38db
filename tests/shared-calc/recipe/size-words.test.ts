import { describe, expect, test } from 'vitest';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { tankSizeWords } from '#shared-calc/recipe/size-words.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { tankOf } from '#tests/electron/book/sample-records.ts';

const us: Display = { ...plainDisplay, units: 'us', fractions: true };
const bare = { insideLengthMm: undefined, insideDepthMm: undefined, insideHeightMm: undefined };

function tank(more: { readonly [K in keyof Tank]?: Tank[K] | undefined }): Tank {
  const { insideLengthMm: _l, insideDepthMm: _d, insideHeightMm: _h, ...rest } = tankOf('T20');
  const given = Object.fromEntries(Object.entries({ ...bare, ...more }).filter(([, value]) => value !== undefined));
  return { ...rest, ...given };
}

const hexagon = tank({ shape: 'hexagon', insideLengthMm: 260, insideHeightMm: 500 });
const rectangle = tank({ insideLengthMm: 600, insideDepthMm: 450, insideHeightMm: 450 });

describe('tankSizeWords', () => {
  test.each([
    [rectangle, '600 × 450 × 450 mm inside', '23 5/8 × 17 11/16 × 17 11/16 in inside'],
    [
      hexagon,
      'hexagon, side 260, 520 × 450 across, 500 high, in mm',
      'hexagon, side 10 1/4, 20 1/2 × 17 11/16 across, 19 11/16 high, in inches',
    ],
    [
      tank({ shape: 'cylinder', insideLengthMm: 400, insideHeightMm: 500 }),
      'cylinder, 400 across, 500 high, in mm',
      'cylinder, 15 3/4 across, 19 11/16 high, in inches',
    ],
    [
      tank({ shape: 'corner', insideLengthMm: 640, sideReturnMm: 280, insideHeightMm: 650 }),
      'corner, 640 along each wall, returns 280, 650 high, in mm',
      'corner, 25 3/16 along each wall, returns 11, 25 9/16 high, in inches',
    ],
    [
      tank({ shape: 'bow', insideLengthMm: 890, insideDepthMm: 390, frontBowMm: 70, insideHeightMm: 500 }),
      'bow, 890 long, 390 deep at the sides, bowed out by 70, 500 high, in mm',
      'bow, 35 1/16 long, 15 3/8 deep at the sides, bowed out by 2 3/4, 19 11/16 high, in inches',
    ],
  ])('each shape is said by its own measurements, in the units of the workshop', (of, metric, customary) => {
    expect([tankSizeWords(of, plainDisplay), tankSizeWords(of, us)]).toEqual([metric, customary]);
  });

  test('what is not measured is said to be, never left out', () => {
    expect([
      tankSizeWords(tank({ insideLengthMm: 600, insideDepthMm: 450 }), plainDisplay),
      tankSizeWords(tank({ shape: 'hexagon', insideHeightMm: 500 }), plainDisplay),
      tankSizeWords(tank({}), plainDisplay),
    ]).toEqual([
      '600 long, 450 deep, height not measured, in mm',
      'hexagon, side not measured, 500 high, in mm',
      'not measured',
    ]);
  });

  test('a side is said as it was typed, with its unit where that is another', () => {
    const typed = { insideLengthMm: '23 1/2 in', insideDepthMm: '18 in' };
    const measured = { ...rectangle, insideLengthMm: 596.9, insideDepthMm: 457.2, typed };

    expect([tankSizeWords(measured, us), tankSizeWords(measured, plainDisplay)]).toEqual([
      '23 1/2 × 18 × 17 11/16 in inside',
      '23 1/2 in × 18 in × 450 mm inside',
    ]);
  });
});
