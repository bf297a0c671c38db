import { readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { parse } from 'csv-parse/sync';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFaults } from '#tests/browser/axe-faults.ts';
import { servePapers, type PaperWindow, type ServedPapers } from '#tests/browser/papers/served-papers.ts';
import { belowField } from '#tests/browser/below-field.ts';

let served: ServedPapers;

beforeAll(async () => {
  served = await servePapers(alterQuote);
});
afterAll(async () => served.close());

/** Makes Q-0002 A cheaper directly in the file, outside the program. */
function alterQuote(path: string): void {
  const book = new Database(path);
  const trigger = book.prepare("SELECT sql FROM sqlite_schema WHERE name = 'issued_quote_stays'").pluck().get();
  book.exec('DROP TRIGGER issued_quote_stays');
  book.exec(
    `UPDATE issued_quote SET body = replace(body, '"grossCoins":728527', '"grossCoins":128527') WHERE id = 'Q-0002A'`,
  );
  book.exec(String(trigger));
  book.close();
}

async function on<T>(place: string, look: (page: Page) => Promise<T>, window?: PaperWindow): Promise<T> {
  const page = await served.open(place, window);
  await painted(page);
  const seen = await look(page);
  await page.context().close();
  return seen;
}

/** Waits until the requested content is on the page. */
async function painted(page: Page): Promise<void> {
  await page.evaluate('new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))');
}

const light: PaperWindow = { width: 1280, height: 800 };
const dark: PaperWindow = { width: 1280, height: 800, scheme: 'dark' };
/** 1280 px at 400 %. */
const narrow: PaperWindow = { width: 320, height: 256 };

const places = [
  'jobs/J02',
  'jobs/J03/needs',
  'jobs/J03/pick-list',
  'store/M01',
  'run/M01',
  'run/order/S-hollin',
  'quotes/J02',
  'quotes/Q-0001B',
  'quotes/changed/Q-0001A/Q-0001B',
  'quotes/options',
  'quotes/all',
  'quotes/prices',
];

/** Goes to a view of an open page and waits until it is shown. */
async function goTo(page: Page, place: string): Promise<void> {
  await page.evaluate(`location.hash = '#/${place}'`);
  await page.waitForFunction(`document.querySelector('main')?.textContent !== '' && location.hash === '#/${place}'`);
  await painted(page);
}

describe('the places of the money side', () => {
  test.each([
    ['light', light],
    ['dark', dark],
    ['at four times the size', narrow],
  ])('no accessibility fault %s', async (_, window) => {
    const faults = await on(
      'jobs',
      async (page) => {
        const found: (readonly [place: string, faults: readonly string[]])[] = [];
        for (const place of places) {
          await goTo(page, place);
          found.push([place, await axeFaults(page)]);
        }
        return found;
      },
      window,
    );
    expect(faults).toEqual(places.map((place) => [place, []]));
  });

  test('at four times the size nothing but a table reaches over the edge', async () => {
    const wide = await on(
      'jobs/J02',
      (page) => page.evaluate<number>('document.documentElement.scrollWidth - document.documentElement.clientWidth'),
      narrow,
    );
    expect(wide).toBe(0);
  });
});

describe('Jobs board', () => {
  test('jobs are walked with the arrows, and the one that is opened lies open the next time', async () => {
    const page = await served.open('jobs/J01');
    await page.focus('nav[aria-label="Jobs"] a[href="#/jobs/J01"]');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForSelector('role=article[name="Job J02"]');
    await page.reload();
    await page.goto(page.url().replace(/#.*/, '#/jobs'));
    await page.waitForSelector('role=article');
    const open = await page
      .getByRole('navigation', { name: 'Jobs' })
      .locator('[aria-current="true"] b')
      .allTextContents();
    await page.context().close();
    expect(open).toEqual(['J02']);
  });

  test('a first message becomes a job by the keyboard alone; a refusal names its cure first', async () => {
    const page = await served.open('jobs');
    await page.getByRole('button', { name: 'New job', exact: true }).click();
    await page.getByLabel('Title').last().fill('Dental waiting room');
    await page.getByLabel('Sizes', { exact: true }).fill('T70');
    await page.keyboard.press('Enter');
    const refused = await page.locator('dialog [role="alert"]').textContent();
    await page.getByLabel('Sizes', { exact: true }).fill('T05');
    await page.keyboard.press('Enter');
    await page.waitForSelector('role=article[name="Job J05"]');
    const state = await page.getByLabel('State').inputValue();
    await page.click('footer >> text=Undo');
    await page
      .getByRole('navigation', { name: 'Jobs' })
      .getByRole('link', { name: 'J05' })
      .waitFor({ state: 'detached' });
    await page.context().close();
    expect([refused, state]).toEqual(['No tank called T70 in the tank book. Did you mean T07?', 'enquiry']);
  });

  test('a figure of the survey holds for the whole job on its size bench', async () => {
    const page = await served.open('jobs/J01');
    await page.getByLabel('Shelf rating').fill('60');
    await page.keyboard.press('Enter');
    const back = page.getByRole('button', { name: 'Shelf rating back to house' });
    await back.waitFor();
    const below = await belowField(page.getByLabel('Shelf rating', { exact: true }));
    await back.click();
    await back.waitFor({ state: 'detached' });
    await page.context().close();
    expect(below).toBe('whole job; the house has 100 kg');
  });

  test('a job that is not paid for stays where it is, and says what it wants', async () => {
    const refusal = await on('jobs/J01', async (page) => {
      await page.getByLabel('State').selectOption('ordered');
      return page.getByRole('status').filter({ hasText: 'cannot be' }).textContent();
    });
    expect(refusal).toBe(
      'J01 cannot be ordered: its deposit is not in. Record it with its day, or accept the quote first.',
    );
  });
});

describe('Store', () => {
  test('what is used comes off, and is there again undone', async () => {
    const page = await served.open('store/M01');
    await page.getByLabel('Amount', { exact: true }).fill('2.5');
    await page.getByRole('button', { name: 'Use', exact: true }).click();
    await page.waitForSelector('text=4.50\u00a0L free for any job');
    const label = await page.locator('footer').textContent();
    await page.click('footer >> text=Undo');
    await page.waitForSelector('text=7.00\u00a0L free for any job');
    await page.context().close();
    expect(label).toContain('2.50\u00a0L of M01 used');
  });
});

describe('Shopping run', () => {
  test('packs chosen by hand say what they cost over the best, and stand when the page is opened anew', async () => {
    const page = await served.open('run/M01');
    await page.getByLabel('Packs of 10\u00a0L').fill('8');
    await page.keyboard.press('Enter');
    await page.waitForSelector('text=Back to the best');
    const said = await page.getByRole('complementary').getByRole('status').textContent();
    await page.reload();
    await page.waitForSelector('text=Back to the best');
    const again = await page.getByRole('complementary').getByRole('status').textContent();
    await page.getByRole('button', { name: 'Back to the best' }).click();
    await page.waitForSelector('text=The least there is.');
    await page.context().close();
    expect(said).toMatch(/^49\.00\u00a0cr over the best\./);
    expect(again).toBe(said);
  });

  test('a supplier’s order comes out as CSV that another reader takes', async () => {
    const page = await served.open('run/order/S-marlvale');
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('text=Save as CSV')]);
    const rows = parse(readFileSync(await download.path(), 'utf8'), { bom: true });
    await page.context().close();
    expect([rows[0], rows[1]]).toEqual([
      ['material', 'label', 'send', 'cost'],
      ['PG', 'Ground plants', '26 pieces', '80.60'],
    ]);
  });
});

describe('Quotes', () => {
  test('issuing asks once, and what is issued stands with its seal; Undo does not reach it', async () => {
    const page = await served.open('quotes/J01');
    await page.getByRole('button', { name: 'Issue' }).click();
    const warned = await page.locator('dialog b').textContent();
    await page.locator('dialog').getByRole('button', { name: 'Issue' }).click();
    await page.waitForSelector('h2:has-text("Quote Q-0004, revision A")');
    await page.waitForSelector('#side-panel p[data-state]:has-text("as it was issued")');
    const undo = await page.locator('footer').textContent();
    await page.context().close();
    expect([warned, undo?.includes('Q-0004')]).toEqual(['Issuing cannot be undone.', false]);
  });

  test('an altered quote is named, here and on the list', async () => {
    const signs = await on('quotes/Q-0002A', async (page) => {
      const sidePanel = await page.getByRole('complementary').locator('p[data-state]').first().textContent();
      await goTo(page, 'quotes/all');
      return [sidePanel, await page.getByRole('row', { name: 'Q-0002 A' }).getByText('altered').textContent()];
    });
    expect(signs).toEqual(['altered since it was issued', 'altered since it was issued']);
  });

  test('what changed sums to the difference of the two prices', async () => {
    const rows = await on('quotes/changed/Q-0001A/Q-0001B', (page) =>
      page.getByRole('main').locator('tfoot tr').allTextContents(),
    );
    expect(rows).toEqual([
      'By the client-432.59',
      'By us0.00',
      'By the suppliers0.00',
      'Price before tax1,441.621,009.03-432.59',
    ]);
  });

  test('the client’s CSV shows no cost and no margin', async () => {
    const page = await served.open('quotes/Q-0001A');
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('text=Save as CSV')]);
    const [head] = parse(readFileSync(await download.path(), 'utf8'), { bom: true });
    await page.context().close();
    expect(head).toEqual(['item', 'price', 'tax class']);
  });

  test('on paper there is the paper and nothing else', async () => {
    const shown = await on('quotes/J02', async (page) => {
      await page.emulateMedia({ media: 'print' });
      const parts = [
        'nav[aria-label="Places"]',
        'footer',
        'main > header',
        '#side-panel',
        'nav[aria-label="Quotes"]',
        'article',
      ];
      return Promise.all(parts.map((part) => page.locator(part).first().isVisible()));
    });
    expect(shown).toEqual([false, false, false, false, false, true]);
  });
});

test('none of it made the console or the content policy complain', () => {
  expect(served.complaints().filter((told) => !told.includes('Q-0002'))).toEqual([]);
});
