import { describe, expect, test } from 'vitest';
import { deciders } from '#shared-calc/cautions/deciders.ts';
import { cautionEntry, cautionIds } from '#shared-calc/cautions/all-cautions.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';

describe('whoDecides', () => {
  test.each([
    ['Builder', 'Builder decides'],
    ['Vet or keeper', 'Vet or keeper decides'],
    ['Keeper, vet', 'Keeper and vet decide'],
    ['Experienced keeper; exotic-animal vet', 'Experienced keeper and exotic-animal vet decide'],
    ['Keeper, vet, owner', 'Keeper, vet and owner decide'],
    ['Builder; vet if skin signs', 'Builder decides; vet if skin signs'],
  ])('%s', (who, says) => {
    expect(whoDecides(who)).toBe(says);
  });

  test('of several at a step nobody "decides" alone', () => {
    const said = [...deciders.map(String), ...cautionIds.map((id) => String(cautionEntry(id).decides))].map(whoDecides);
    expect(said.filter((each) => /(?:,| and ).* decides\b/.test(each))).toEqual([]);
  });
});
