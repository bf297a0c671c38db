import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { pickIn } from '#tests/browser/pick-in.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('recipe');
});

const button = (name: string) => page.getByRole('button', { name, exact: true });
const dialog = () => page.getByRole('dialog');
const does = (name: string | RegExp) => dialog().getByRole('button', { name });
const line = (name: string) =>
  page.getByRole('table', { name: 'Lines of the house recipe' }).getByRole('button', { name: new RegExp(`^${name}:`) });

describe('a house recipe', () => {
  test('gets a line of a kind and a name in words, after the line where the cursor is', async () => {
    await line('Drainage depth').focus();
    await button('Add a line').click();
    await dialog().getByLabel('What it is').selectOption('need');
    await dialog().getByLabel('Name in words').fill('Filter wool');
    await page.keyboard.press('Enter');

    await expect.poll(() => line('Filter wool').evaluate((row) => row === document.activeElement)).toBe(true);
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => line('Drainage depth').evaluate((row) => row === document.activeElement)).toBe(true);
  });

  test('is made of answers, and says in the dialog what it cannot read', async () => {
    await button('New recipe').click();
    await dialog().getByLabel('Title').fill('Bare drainage');
    await dialog().getByLabel('Drainage', { exact: true }).check();
    await dialog().getByLabel('Drainage, depth').fill('much');
    await does('Make it').click();
    await expect.poll(() => dialog().getByRole('alert').innerText()).toContain('much');

    await dialog().getByLabel('Drainage, depth').fill('35 mm');
    await does('Make it').click();
    await expect.poll(() => page.getByRole('button', { name: 'Drainage depth: 35 mm' }).isVisible()).toBe(true);
    expect(await line('Litter depth').count()).toBe(0);
  });

  test('takes a section from another recipe with what it reads, and loses one', async () => {
    await button('The recipe itself').click();
    await button('Take lines from another recipe').click();
    await pickIn(dialog().getByLabel('From', { exact: true }), 'H1');
    await dialog().getByRole('checkbox', { name: 'Filter wool' }).check();
    await does('Take them').click();
    await expect.poll(() => line('Filter wool').isVisible()).toBe(true);

    await button('Section Drainage').click();
    await page.getByRole('menuitem', { name: 'Remove the section' }).click();
    await expect.poll(() => dialog().getByRole('table', { name: 'What rests on it' }).isVisible()).toBe(true);
    await dialog()
      .getByRole('checkbox', { name: /Remove the lines/ })
      .check();
    await does(/^Remove \d+ lines/).click();
    await expect.poll(() => line('Drainage depth').count()).toBe(0);

    await page.keyboard.press('Control+z');
    await expect.poll(() => line('Drainage depth').count()).toBe(1);
  });

  test('a whole copy is made to hold only what differs, beside the recipe that is most like it', async () => {
    await pickIn(page.getByLabel('Recipe', { exact: true }), 'H1');
    await button('Copy the recipe').click();
    await button('Beside another recipe').click();
    await expect.poll(() => dialog().getByLabel('Recipe', { exact: true }).inputValue()).toMatch(/^H1 /);
    await does('Hold only what differs').click();
    await expect.poll(() => does('Hold only what differs').count()).toBe(0);
    await does('Close').click();
    await expect.poll(() => page.getByText('It is as H1 in every line.').isVisible()).toBe(true);
  });

  test('a child is made for tanks that are picked and for a season', async () => {
    await button('Make a child of it').click();
    await dialog().getByLabel('For tanks').fill('T03');
    await page.keyboard.press('Enter');
    await dialog().getByLabel('For the season').fill('winter');
    await does('Make it').click();
    await expect.poll(() => dialog().getByRole('alert').innerText()).toContain('10-01 to 03-31');
    await dialog().getByLabel('For the season').fill('10-01 to 03-31');
    await does('Make it').click();
    const panel = page.getByRole('complementary', { name: 'The recipe' });
    await expect.poll(() => panel.innerText()).toMatch(/For tanks\s+T03\s+For the season\s+10-01 to 03-31/);
  });
});

noneComplained(pages);
