import type { Locator } from 'playwright-core';

/** Picks from the list of a field by the code or the name. */
export async function pickIn(field: Locator, words: string): Promise<void> {
  await field.fill(words);
  await field.press('Enter');
}
