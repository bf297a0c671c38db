import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paperGrain } from '#renderer/drawing/paper-grain.ts';

function box(width: number, height: number) {
  return [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
}

describe('paperGrain', () => {
  test('a deep layer of a large tank has no more grain than a printer takes at once', () => {
    const sizes = fc.record({ width: fc.integer({ min: 1, max: 3000 }), height: fc.integer({ min: 1, max: 1500 }) });
    fc.assert(
      fc.property(sizes, fc.constantFrom('pellets', 'grains', 'crumbs', 'misfit'), ({ width, height }, name) => {
        const strokes = paperGrain(box(width, height), name).map(({ path }) => path.split('M').length - 1);
        expect(Math.max(...strokes)).toBeLessThanOrEqual(600);
        expect(Math.min(...strokes)).toBeGreaterThan(0);
      }),
    );
  });

  test('a layer without depth has none', () => {
    expect(paperGrain(box(445, 0), 'pellets')).toEqual([]);
  });
});
