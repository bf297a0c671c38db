import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { axeFaults } from '#tests/browser/axe-faults.ts';
import { openPages, type Pages } from '#tests/browser/pages.ts';
import { buildStandIn } from './stand-in/build.ts';
import { wrongBelow } from '#tests/browser/below-field.ts';

let pages: Pages;

beforeAll(async () => {
  pages = await openPages(await buildStandIn('quiet-places'));
});
afterAll(async () => {
  await pages.close();
});

const field = (page: Page, spoken: string) =>
  page.locator(':is([role="gridcell"], [role="rowheader"])', {
    has: page.locator('[data-part="spoken"]', { hasText: spoken }),
  });
const saidOf = (page: Page) => page.textContent('footer [role="alert"]');
const undoes = (page: Page) => page.textContent('footer');

describe('the function book', () => {
  test('works while one types, and marks the argument that is wrong', async () => {
    const page = await pages.open('function-book/loose_needed');
    const first = await page.textContent('output');
    await page.getByLabel('placed').fill('20');
    const more = await page.textContent('output');
    await page.getByLabel('placed').fill('40 mm');
    expect([first, more, await wrongBelow(page.getByLabel('placed'))]).toEqual([
      '16.84 L',
      '21.02 L',
      'Placed (litres after settling in the tank) needs a volume (L, mL, gal). You gave 40 mm.',
    ]);
    await page.context().close();
  });

  test('finds a function by a word and opens its leaf', async () => {
    const page = await pages.open('function-book');
    await page.keyboard.press('/');
    await page.keyboard.type('steam temp');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 2, name: 'Steam' }).waitFor();
    expect(await page.getByRole('navigation', { name: 'Functions' }).locator('[aria-current]').textContent()).toBe(
      'steam_temp',
    );
    await page.context().close();
  });
});

describe('the workshop', () => {
  test('keeps what is written when one goes on, and refuses a bad figure at its place', async () => {
    const page = await pages.open('workshop');
    await page.getByLabel('A quote is valid for').fill('30');
    await page.keyboard.press('Enter');
    const done = await undoes(page);
    await page.getByLabel('Deposit', { exact: true }).fill('two fifths');
    await page.keyboard.press('Enter');
    expect([done, await wrongBelow(page.getByLabel('Deposit', { exact: true }))]).toEqual([
      expect.stringContaining('a quote is valid for of the workshop'),
      'Deposit: "two fifths" is not a figure.',
    ]);
    await page.context().close();
  });

  test('shows lengths in another unit everywhere once it is chosen', async () => {
    const page = await pages.open('workshop');
    await page.getByLabel('Length', { exact: true }).selectOption('in');
    await page.evaluate(() => (location.hash = '#/tank-book'));
    await page.waitForSelector('[data-chosen]');
    expect(await field(page, 'Length, T01, 11.81 in').count()).toBe(1);
    await page.context().close();
  });

  test('a currency without decimals is refused while an amount has parts of a coin', async () => {
    const page = await pages.open('workshop');
    await page.getByLabel('Decimals of the currency').selectOption('0');
    expect(await saidOf(page)).toContain('has parts that such a coin does not know');
    await page.context().close();
  });

  test('shows what a backup would change before it is brought back', async () => {
    const page = await pages.open('workshop');
    await page.getByRole('button', { name: 'Restore a backup' }).click();
    await page.getByRole('button', { name: '2027-03-14' }).click();
    const changes = page.getByRole('table', { name: 'What would change' });
    await changes.waitFor();
    expect(await changes.locator('tbody tr').allTextContents()).toEqual(['prices120']);
    await page.context().close();
  });

  test('a book that cannot be opened is refused in the dialog, which stays open', async () => {
    const page = await pages.open('workshop');
    await page.getByRole('button', { name: 'Open a book' }).click();
    const file = page.getByLabel('File, with its whole folder');
    await file.fill('/books/none.loamwright');
    await page.keyboard.press('Enter');
    expect(await wrongBelow(file)).toBe('There is no book at /books/none.loamwright.');
    await page.context().close();
  });
});

describe('the needs list', () => {
  test('tells what each size takes and goes out as CSV', async () => {
    const page = await pages.open('needs');
    await page.getByRole('table', { name: 'What is needed' }).waitFor();
    const clay = await page.getByRole('row', { name: 'M01' }).getByRole('cell').allTextContents();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as CSV' }).click();
    expect([clay.slice(0, 7), (await saved).suggestedFilename()]).toEqual([
      ['6.24', '16.84', '34.05', '57.13', 'L', '7.00', '1 × 45 L; 1 × 10 L'],
      'needs Ferry waiting hall.csv',
    ]);
    await page.context().close();
  });

  test('the basis of the job is chosen here and can be undone', async () => {
    const page = await pages.open('needs');
    await page.getByLabel('Cost of materials').selectOption('packs');
    expect(await undoes(page)).toContain('cost of materials of J01: every pack bought');
    await page.context().close();
  });
});

/** Each of these views, and an element that shows it is ready. */
const places = [
  ['tank-book', '[data-chosen]'],
  ['material-book', '[data-chosen]'],
  ['plant-book', '[data-chosen]'],
  ['culture-book', '[data-chosen]'],
  ['rate-book', '[data-chosen]'],
  ['rate-book/suppliers', '[data-chosen]'],
  ['function-book', 'output'],
  ['workshop', 'role=heading[name="Letterhead"]'],
  ['needs', 'role=table[name="What is needed"]'],
] as const;

describe('every quiet place', () => {
  for (const [place, ready] of places) {
    test(`${place} has no accessibility fault in light and dark`, async () => {
      const faults: string[] = [];
      for (const scheme of ['light', 'dark'] as const) {
        const page = await pages.open(place, { width: 1280, height: 800, scheme });
        await page.waitForSelector(ready);
        faults.push(...(await axeFaults(page)));
        await page.context().close();
      }
      expect(faults).toEqual([]);
    });

    test(`${place} at 400 % zoom scrolls only downward`, async () => {
      const page = await pages.open(place, { width: 320, height: 256 });
      await page.waitForSelector(ready);
      const [wide, inner] = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
      expect([wide, await axeFaults(page)]).toEqual([inner, []]);
      await page.context().close();
    });
  }

  test('the sheets over the file and of a list have no accessibility fault', async () => {
    const page = await pages.open('workshop');
    const faults: string[] = [];
    for (const act of ['Restore a backup', 'Save a copy', 'New book', 'Open a book']) {
      await page.getByRole('button', { name: act }).click();
      faults.push(...(await axeFaults(page)));
      await page.keyboard.press('Escape');
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  test('never meets the content policy or an error', () => {
    expect(pages.complaints()).toEqual([]);
  });
});
