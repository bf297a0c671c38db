import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mixPart } from '#shared-calc/trade/media/mix-part.ts';
import { mixSplit, mixSplitEntry } from '#shared-calc/trade/media/mix-split.ts';

function litresOf(split: ReturnType<typeof mixSplit>): readonly number[] {
  return 'refused' in split ? [] : split;
}

describe('mixSplit', () => {
  // Blending shrinkage: common practice, no source.
  test('40.216 L of 3 : 3 : 2 : 1 : 1 at 12 % shrinkage', () => {
    const litres = litresOf(mixSplit(40.216, [3, 3, 2, 1, 1], 0.12));
    expect(litres.map((each) => each.toFixed(3))).toEqual(['13.710', '13.710', '9.140', '4.570', '4.570']);
  });

  test('the parts together are the mix before it shrinks, and each is what mix_part gives', () => {
    const parts = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(parts, fc.double({ min: 0, max: 0.9, noNaN: true }), (given, shrink) => {
        const all = given.reduce((sum, part) => sum + part, 0);
        fc.pre(all > 0);
        const litres = mixSplit(40, given, shrink);
        expect(litres).toEqual(given.map((part) => mixPart.compute([40, part, all, shrink])));
        expect(litresOf(litres).reduce((sum, each) => sum + each, 0)).toBeCloseTo(40 / (1 - shrink), 9);
      }),
    );
  });

  test.each([
    ['all parts zero', { loose: 40, parts: [0, 0], shrink: 0.12 }, 'Parts must be positive.'],
    ['no parts', { loose: 40, parts: [], shrink: 0.12 }, 'Parts must be positive.'],
    ['a part below zero', { loose: 40, parts: [3, -1], shrink: 0.12 }, 'Parts must be positive.'],
    ['shrinkage typed as 12', { loose: 40, parts: [3, 1], shrink: 12 }, 'Blending shrinkage is a share; 12 % is 0.12.'],
    ['litres below zero', { loose: -40, parts: [3, 1], shrink: 0.12 }, 'Loose litres cannot be below zero.'],
  ])('%s is refused', (_, { loose, parts, shrink }, says) => {
    expect(mixSplit(loose, parts, shrink)).toEqual({ refused: says });
  });

  test('it gives a list and so has no name in rules', () => {
    expect([mixSplitEntry.name, mixSplitEntry.inRules]).toEqual(['MIX_SPLIT', false]);
  });
});
