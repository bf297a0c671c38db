import { describe, expect, test } from 'vitest';
import { isFlies, seedUseOf } from '#shared-calc/prepare/culture-demands.ts';
import { portionOf } from '#shared-calc/prepare/portion-of.ts';
import { cultureCautions } from '#shared-calc/prepare/say-cultures.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

function kindOf(id: string, change: Partial<CultureKind> = {}): CultureKind {
  const kind = records.cultureKind.get(id);
  if (!kind) throw new Error(`no ${id}`);
  return { ...kind, ...change };
}

describe('what a kind of culture is', () => {
  test.each([
    ['C1', 'springtailSeed', 2000],
    ['C2', 'springtailSeed', 2000],
    ['C3', 'isopodFounders', 10],
    ['C4', 'isopodFounders', 10],
  ])('%s is taken for %s, %d a portion', (id, use, animals) => {
    expect(seedUseOf(kindOf(id))).toBe(use);
    expect(portionOf(records, kindOf(id), '2027-01-11').animals).toBe(animals);
  });

  test('flies are planned by the week', () => {
    expect([...records.cultureKind.values()].filter(isFlies).map(({ id }) => id)).toEqual(['C5', 'C6']);
  });

  test('a name decides nothing: springtails called food for isopods stay springtails', () => {
    const kind = kindOf('C1', { label: 'Isopod food', note: 'isopods' });
    const ids = (each: CultureKind) => cultureCautions(each).map(({ id }) => id);

    expect(seedUseOf(kind)).toBe('springtailSeed');
    expect(ids(kind)).toEqual(ids(kindOf('C1')));
  });

  test('productive days alone make no flies', () => {
    expect(isFlies(kindOf('C1', { productiveDays: 21 }))).toBe(false);
  });
});
