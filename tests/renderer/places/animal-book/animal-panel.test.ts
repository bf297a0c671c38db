import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('animal-book/A1');
});

describe('the panel of a kind of animal', () => {
  test('a batch that came today stands apart for the days of its kind', async () => {
    const panel = page.getByRole('complementary', { name: 'About the chosen kind of animal' });
    await panel.getByLabel('Animals of the new batch').fill('6');
    await panel.getByRole('button', { name: 'Write down a batch' }).click();
    const batch = panel.getByRole('article', { name: 'Batch AB-001' });

    await expect.poll(() => batch.innerText()).toContain('60 days left');
    expect(await batch.innerText()).toContain('6 go nowhere yet');
  });

  test('a look at them is kept with its day; without words it is refused at its place', async () => {
    const batch = page.getByRole('article', { name: 'Batch AB-001' });
    await batch.getByLabel('Seen today').fill('all eat');
    await batch.getByRole('button', { name: 'Write the look' }).click();
    await expect.poll(() => batch.innerText()).toContain('all eat');
    await batch.getByLabel('More animals joined').fill('some');
    await batch.getByRole('button', { name: 'They joined' }).click();

    await expect.poll(() => batch.getByRole('status').innerText()).toContain('"some" is not a figure');
  });

  test('a figure is marked by where it is from', async () => {
    const floor = page.getByLabel('Floor', { exact: true });
    await floor.selectOption('from memory');

    await expect.poll(() => page.getByText('18 °C, from memory').count()).toBe(1);
  });
});

noneComplained(pages);
