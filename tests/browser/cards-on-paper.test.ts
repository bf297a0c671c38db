import path from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { plain } from './bench-hands.ts';
import { addFullJob, cardTanks } from './papers/full-job.ts';
import { pagesPrinted, paperFormats } from './papers/page-count.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();

async function openCard(card: string, kit: string, more: Readonly<Record<string, string>> = {}): Promise<Page> {
  const page = await pages.begin(`cards/J02/${card}`, (book) =>
    addFullJob(book, path.join(path.dirname(book), 'recent.json'), { kit, ...more }),
  );
  await page.waitForSelector('article');
  return page;
}

async function sheets(page: Page): Promise<readonly number[]> {
  const counts: number[] = [];
  for (const format of paperFormats) counts.push(await pagesPrinted(page, format));
  return counts;
}

describe('the handover card', () => {
  test.each(['full', 'show'])(
    'of every tank with the %s kit hangs beside it on one page of A4 or Letter',
    async (kit) => {
      const page = await openCard('handover', kit);
      expect(await sheets(page)).toEqual([cardTanks.length, cardTanks.length]);
    },
  );

  test('tells on it all that a keeper rings up about', async () => {
    const page = await openCard('handover', 'full');
    const card = plain(await page.locator('article > section').nth(6).innerText());
    const expected = [
      'Temperature 18 °C to 27 °C',
      'Humidity 75 % to 95 %',
      'Light 12 h a day, on the timer',
      'Mist 15 s each time, 3 a day',
      'Every week:',
      'Every month:',
      'Every year:',
      'Feed as the keeper has written down.',
      'refill it with low-mineral water',
      'rinse off all soap',
      'After: wash with soap',
      'No glass cleaner, air freshener',
      'White mould on wood and leaves in the first month',
      'When it is an emergency is not known yet: ask the keeper or vet.',
      'Electrician',
      'Vet',
      'Plants that die within 30 days are replaced once.',
      'Seals and build are ours for 12 months.',
      'Call: how is the tank: Friday 23 July 2027',
    ];
    expect(expected.filter((words) => !card.includes(words))).toEqual([]);
  });
});

describe('other cards', () => {
  test('the survey card, with a line for each question, ends on its third page', async () => {
    expect(await sheets(await openCard('survey', 'full'))).toEqual([3, 3]);
  });

  test('the animals-in plan takes two pages, with what to mind on the second', async () => {
    const later = await sheets(await openCard('animals-in', 'full'));
    const soon = await sheets(await openCard('animals-in', 'full', { settle_in: '7 d' }));
    expect([later, soon]).toEqual([
      [2, 2],
      [2, 2],
    ]);
  });
});

/** The words that a printer gets: the page as it is while it is printed. */
async function printedWords(page: Page): Promise<string> {
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  const words = plain(await page.locator('body').innerText());
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await page.emulateMedia({ media: null });
  return words;
}

describe('lists on paper', () => {
  let page: Page;
  beforeAll(async () => {
    page = await pages.begin('bench');
    await page.getByRole('grid').waitFor();
  });

  test.each([
    [
      'bench',
      ['Size bench', 'Underlined figures are given', 'T07', 'Full kit', 'Drainage depth', 'mm', 'Sums', 'Price'],
    ],
    ['tank-book', ['Tank book', 'Length, mm', 'T01', 'T12', 'Rectangle 900']],
    ['material-book', ['Material book', 'Expanded clay', 'Pack']],
    ['plant-book', ['Plant book', 'Code']],
    ['culture-book', ['Culture book', 'Code']],
    ['animal-book', ['Animal book', 'Code']],
    ['rate-book/suppliers', ['Rate book, Suppliers', 'Hollin Lane']],
    ['function-book', ['Function book', 'layer_volume', 'Layer volume']],
    ['store', ['Store', 'This page has no paper of its own; it is printed as it is shown.']],
  ])('%s has its heads and rows, and the page is as before', async (place, wanted) => {
    await page.evaluate((hash) => (location.hash = hash), `#/${place}`);
    await page.getByRole('heading', { level: 1, name: (wanted[0] ?? '').split(',')[0] ?? '' }).waitFor();
    const title = await page.title();
    const words = await printedWords(page);
    const left = [await page.title(), await page.locator('[data-paper]').count()];
    expect([wanted.filter((each) => !words.includes(each)), left]).toEqual([[], [title, 0]]);
  });
});

noneComplained(pages);
