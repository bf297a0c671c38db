import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import { openRecipeStore } from '#renderer/store/recipe-store.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { benchAtHand } from './book-at-hand.ts';
import { shown } from './shown-box.ts';

async function recipeAtHand() {
  const hand = await benchAtHand();
  const display = signal(displayOf(workshopOf(hand.book.records.peek())));
  return { ...hand, recipe: openRecipeStore({ ...hand, display }) };
}

describe('openRecipeStore', () => {
  test("a recipe is worked on a reference size of one's choice", async () => {
    const { recipe } = await recipeAtHand();
    recipe.open('H1');
    expect([recipe.tank.value?.id, recipe.box('floor_area')?.value]).toEqual(['T07', expect.closeTo(0.4005, 9)]);
    recipe.standOn('T08');
    expect(recipe.box('floor_area')?.value).toBeCloseTo(0.72, 9);
  });

  test('a figure of the house written here is on the bench at once', async () => {
    const hand = await recipeAtHand();
    hand.recipe.open('H1');
    expect(hand.recipe.write('litter', '25')).toBeUndefined();
    expect([hand.recipe.box('litter')?.value, shown(hand, 'litter', 'T03')[1]]).toEqual([0.025, '25']);
  });

  test('what cannot be read or leads back to itself is refused, and nothing is written', async () => {
    const hand = await recipeAtHand();
    hand.recipe.open('H1');
    expect(hand.recipe.write('litter', '25 L')).toMatch(/^This line is a length in mm\./);
    expect(hand.recipe.write('drainage', 'soil_front')).toBe(
      'This box depends on itself: drainage -> soil_front -> drainage.',
    );
    await hand.quiet();
    expect(hand.service.entries()).toEqual([]);
  });
});
