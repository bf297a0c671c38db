import { describe, expect, test } from 'vitest';
import { drainSpec } from '#renderer/curves/drain-spec.ts';

// Scenario 9: T07 Full, 135 mL of mist a day, vapour 49.06 in winter and 31.36 in summer, room for 4.806 L.
const t07 = { called: 'T07', roomL: 4.806, mistMl: 135, winterMl: 49.06, summerMl: 31.36 };

describe('drainSpec', () => {
  test('summer fills T07 first: 46.4 days against 55.9, drained every 6 weeks', () => {
    const spec = drainSpec(t07, false);
    expect([spec?.title, spec?.table.rows]).toEqual([
      'Summer fills the drainage first: drain every 6 weeks',
      [
        ['summer', '103.64', '46.4', '4.81'],
        ['winter', '85.94', '55.9', '4.81'],
      ],
    ]);
  });

  test('where mist only replaces the vapour nothing fills, and nothing is drawn', () => {
    expect(drainSpec({ ...t07, mistMl: 31 }, false)).toBeUndefined();
  });

  test('a tank that dries in winter fills in summer alone', () => {
    expect(drainSpec({ ...t07, winterMl: 200 }, false)?.table.rows.map(([season]) => season)).toEqual(['summer']);
  });

  test('under two weeks it is told in days', () => {
    expect(drainSpec({ ...t07, roomL: 1 }, false)?.title).toBe('Summer fills the drainage first: drain every 9 days');
  });
});
