import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('recipe');
});

const filter = () => page.getByLabel('Lines with figures from');
const list = () => page.getByRole('table', { name: 'Lines of the house recipe' });
/** The source of each line that is shown. */
const shown = () => list().locator('tbody tr td:nth-child(3)').allInnerTexts();
const line = (name: string) => list().getByRole('button', { name: new RegExp(`^${name}:`) });
const panel = () => page.locator('#side-panel');

describe('the house recipe', () => {
  test('shows only what is from memory, and arrows walk among those', async () => {
    await filter().selectOption('memory');
    await expect.poll(async () => new Set(await shown())).toEqual(new Set(['from memory']));
    await line('Light per joule').focus();
    await page.keyboard.press('ArrowDown');

    expect(await panel().getByRole('heading', { level: 2 }).innerText()).toBe('Light reaching plants');
  });

  test('a source given in the panel of a line stands in the list, with its day', async () => {
    await line('Light reaching plants').click();
    await panel().getByLabel('Figures from').selectOption('measured');
    await panel().getByLabel('Day, supplier or publication').fill('2027-03-08, T07 with a meter');
    await panel().getByLabel('Day, supplier or publication').press('Enter');
    await filter().selectOption('measured');

    await expect.poll(shown).toEqual(['measured by us']);
  });

  test('a line that is looked for though the filter hides it shows every line again', async () => {
    await line('Light reaching plants').focus();
    await page.keyboard.press('/');
    await page.keyboard.insertText('Moisture at start');
    await page.keyboard.press('Enter');

    await expect.poll(() => filter().inputValue()).toBe('all');
    await expect.poll(() => line('Moisture at start').isVisible()).toBe(true);
  });

  test('a figure written anew has no source until it is given', async () => {
    await line('Moisture at start').dblclick();
    await page.getByRole('textbox', { name: 'Moisture at start of the house' }).fill('14 %');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').getByRole('button', { name: 'Put in force' }).click();
    await filter().selectOption('none');

    await expect.poll(shown).toEqual(['no source given']);
  });

  test('a source is taken back', async () => {
    await filter().selectOption('measured');
    await line('Light reaching plants').click();
    await panel().getByLabel('Figures from').selectOption('');
    await filter().selectOption('none');

    await expect.poll(shown).toEqual(['no source given', 'no source given']);
  });

  test('the words of a line are taken away by emptying them', async () => {
    await filter().selectOption('all');
    await line('Light reaching plants').click();
    await panel().getByLabel('Day, supplier or publication').fill('');
    await panel().getByLabel('Day, supplier or publication').press('Enter');
    await panel().getByLabel('Name in words').fill('');
    await panel().getByLabel('Name in words').press('Enter');

    await expect.poll(() => panel().getByRole('heading', { level: 2 }).innerText()).toBe('Light use');
  });
});

noneComplained(pages);
