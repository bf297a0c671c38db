import { describe, expect, test } from 'vitest';
import { alignPoints } from '#renderer/curves/align-points.ts';

describe('alignPoints', () => {
  test('pieces stand over one row of places, and where a piece has none nothing stands', () => {
    const before = [
      [0, 1250],
      [28, 6010],
    ] as const;
    const after = [
      [28, 3005],
      [42, 6100],
    ] as const;
    expect(alignPoints([before, after])).toEqual([
      [0, 28, 42],
      [1250, 6010, undefined],
      [undefined, 3005, 6100],
    ]);
  });
});
