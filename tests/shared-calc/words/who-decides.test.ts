import { describe, expect, test } from 'vitest';
import { stepCautions } from '#shared-calc/prepare/cautions.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';

describe('whoDecides', () => {
  test.each([
    ['Builder', 'Builder decides'],
    ['Vet or keeper', 'Vet or keeper decides'],
    ["Vessel maker's plate", "Vessel maker's plate decides"],
    ['Keeper, vet', 'Keeper and vet decide'],
    ['Experienced keeper; exotic-animal vet', 'Experienced keeper and exotic-animal vet decide'],
    ['Keeper, vet, owner', 'Keeper, vet and owner decide'],
    ['Carrier and animal-transport rules', 'Carrier and animal-transport rules decide'],
    ['Builder; vet if skin signs', 'Builder decides; vet if skin signs'],
  ])('%s', (who, says) => {
    expect(whoDecides(who)).toBe(says);
  });

  test('of several at a step nobody "decides" alone', () => {
    const said = stepCautions.map(({ decides }) => whoDecides(decides));
    expect(said.filter((each) => /(?:,| and ).* decides\b/.test(each))).toEqual([]);
  });
});
