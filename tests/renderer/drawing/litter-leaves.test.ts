import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { litterLeaves } from '#renderer/drawing/litter-leaves.ts';

describe('litterLeaves', () => {
  test('leaves lie within the tank and within the litter, on its slope', () => {
    const depths = fc.record({
      depth: fc.integer({ min: 120, max: 900 }),
      rise: fc.integer({ min: 0, max: 200 }),
      litter: fc.integer({ min: 3, max: 120 }),
    });
    fc.assert(
      fc.property(depths, ({ depth, rise, litter }) => {
        const outside = litterLeaves({ x: 0, y: 100 }, { x: depth, y: 100 + rise }, litter).filter(({ at, half }) => {
          const over = at.y - 100 - (at.x / depth) * rise;
          return at.x < half * 0.8 || at.x > depth - half * 0.8 || over < 0 || over > litter;
        });
        expect(outside).toEqual([]);
      }),
    );
  });

  test('no litter, no leaves; the same litter, the same leaves', () => {
    const lay = (litter: number) => litterLeaves({ x: 0, y: 0 }, { x: 445, y: 0 }, litter);
    expect([lay(0), lay(30).length > 20]).toEqual([[], true]);
    expect(lay(30)).toEqual(lay(30));
  });
});
