import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeLabels } from '#renderer/drawing/place-labels.ts';

const label = (y: number) => ({ word: `at ${y}`, figure: '', at: { x: 0, y }, tone: 'plain' as const });

describe('placeLabels', () => {
  test('a label stands at its place where there is room, else as near above it as may be', () => {
    expect(placeLabels([label(200), label(15), label(30)], 60, 26).map(({ word, y }) => [word, y])).toEqual([
      ['at 15', 26],
      ['at 30', 86],
      ['at 200', 200],
    ]);
  });

  test('labels keep the order of height and never come nearer than asked', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 600 })), fc.integer({ min: 1, max: 90 }), (heights, apart) => {
        const placed = placeLabels(heights.map(label), apart, 26);
        const near = placed.slice(1).filter(({ y }, index) => y - (placed[index]?.y ?? 0) < apart);
        expect([placed.map(({ at }) => at.y), near]).toEqual([heights.toSorted((a, b) => a - b), []]);
      }),
    );
  });
});
