import { rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { beginBook } from '#electron/book/seed-demo.ts';
import { places, type PlaceId } from '#shared-calc/contract/places.ts';
import { pageDay } from './served-book.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();
let page: Page;

/** What each place of an empty book leads on with, by role and name; those left out are whole without a record. */
const firstActs: Readonly<Partial<Record<PlaceId, readonly ['button' | 'link', string]>>> = {
  today: ['button', 'Next'],
  jobs: ['button', 'Make the first'],
  bench: ['link', 'Begin with what a first quote needs'],
  quotes: ['link', 'Open a job'],
  needs: ['link', 'Take a size'],
  prepare: ['link', 'Make the first on the jobs board.'],
  run: ['link', 'See the jobs'],
  orders: ['link', 'shopping run'],
  store: ['button', 'Put in'],
  cultures: ['link', 'Put the first into the culture book.'],
  recipe: ['button', 'New recipe'],
  'tank-book': ['button', 'Add the first tank'],
  'material-book': ['button', 'Add the first material'],
  'plant-book': ['button', 'Add the first plant'],
  'culture-book': ['button', 'Add the first culture'],
  'animal-book': ['button', 'Add the first kind of animal'],
};

describe('an empty book', () => {
  beforeAll(async () => {
    page = await pages.begin('today', (path) => {
      rmSync(path);
      const made = beginBook(path, { start: 'empty' }, { today: pageDay, backups: false });
      if (!made.ok) throw new Error(JSON.stringify(made.fault));
      made.value.close();
    });
  });

  test.each(places)('$title says what belongs there and the first act', async ({ id, title }) => {
    await page.goto(page.url().replace(/#.*$/, `#/${id}`));
    await page.locator('h1', { hasText: title }).waitFor();
    const [role, name] = firstActs[id] ?? ['button', ''];
    if (name !== '') await page.getByRole(role, { name, exact: true }).first().waitFor();
    expect(await page.getByRole('main').getByRole('alert').allInnerTexts()).toEqual([]);
    expect((await page.locator('body').innerText()).includes('undefined')).toBe(false);
  });
});

noneComplained(pages);
