import { readFileSync } from 'node:fs';
import type { Download, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { places } from '#renderer/frame/places.ts';
import { axeFaults } from './axe-faults.ts';
import { openServedBook, type ServedPages } from './served-book.ts';

let pages: ServedPages;

beforeAll(async () => {
  pages = await openServedBook();
});
afterAll(async () => {
  await pages.close();
});

/** The box of a line and a size by what a reader is told of it: "Litter depth, T07, ...". */
function box(page: Page, line: string, size: string) {
  const start = new RegExp(`^${line}, ${size},`);
  return page.locator('.strips .ag-cell.box', { has: page.locator('.unseen', { hasText: start }) });
}

async function figure(page: Page, line: string, size: string): Promise<string> {
  return (await box(page, line, size).locator('.well, .flat').first().textContent()) ?? '';
}

async function write(page: Page, place: readonly [line: string, size: string], text: string): Promise<void> {
  await box(page, ...place).click();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

function price(page: Page, size: string): Promise<string | null> {
  return box(page, 'Price', size).locator('.flat, .well').first().textContent();
}

async function textOf(download: Download): Promise<string> {
  return readFileSync((await download.path()) ?? '', 'utf8');
}

async function savedTo(page: Page, revision: string): Promise<void> {
  await page.waitForFunction((undo) => document.querySelector('.status')?.textContent?.includes(undo), revision);
}

describe('the main job, start to finish', () => {
  test('three sizes stand at work; a house figure moves all, a local value one, and its working is told', async () => {
    const page = await pages.open('bench');
    const before = await Promise.all(['T03', 'T07', 'T08'].map((size) => figure(page, 'Oak leaves, dry', size)));
    expect(before).toEqual(['79.72', '161.24', '289.87']);

    await write(page, ['Litter depth', 'T07'], '20');
    expect(await figure(page, 'Oak leaves, dry', 'T07')).toBe('107.49');
    expect(await figure(page, 'Oak leaves, dry', 'T03')).toBe('79.72');
    expect(await figure(page, 'Litter depth', 'T07')).toContain('local');

    await box(page, 'Oak leaves, dry', 'T07').click();
    expect(await page.textContent('.slip')).toContain('leaves_need');
    await page.context().close();
  });

  test('a rule over litres and millimetres is refused at its place, and nothing is written', async () => {
    const page = await pages.open('bench');
    await write(page, ['Soil, placed', 'T07'], 'soil_gross - drainage');
    expect(await page.textContent('.box-editor .rule-fault')).toContain('Millimetres cannot be taken from litres.');
    await page.keyboard.press('Escape');
    expect(await figure(page, 'Soil, placed', 'T07')).toBe('41.31');
    await page.context().close();
  });

  test('the bench as CSV holds what the bench shows, unrounded', async () => {
    const page = await pages.open('bench');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'As CSV' }).click(),
    ]);
    const text = await textOf(download);
    expect(text.split('\r\n')[0]).toBe('section,line,label,unit,T03,T07,T08');
    expect(text).toContain(',drainage_need,"Expanded clay, loose",L,6.24384948979');
    await page.context().close();
  });

  test('the needs list as CSV is that of the job', async () => {
    const page = await pages.open('needs');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Take out as CSV' }).click(),
    ]);
    expect((await textOf(download)).split('\r\n')[1]).toMatch(
      /^T03,Rectangle 445 × 445 × 445,tank,1,each,0,1,96.00,96.00,0/,
    );
    await page.context().close();
  });

  test('an edit is there after the program was ended, and can still be taken back', async () => {
    const page = await pages.open('bench');
    await write(page, ['Litter depth', 'T08'], '45');
    await savedTo(page, 'litter depth of T08');
    const dearer = await price(page, 'T08');
    await pages.restart();

    const again = await pages.open('bench');
    expect([await figure(again, 'Litter depth', 'T08'), await price(again, 'T08')]).toEqual(['local45', dearer]);
    await again.keyboard.press('Control+z');
    await again.waitForFunction(
      () => !document.querySelector('.status')?.textContent?.includes('Undo litter depth of T08'),
    );
    expect(await figure(again, 'Litter depth', 'T08')).toBe('30');
    await again.context().close();
  });

  test('two windows on one book see each other’s edits', async () => {
    const one = await pages.open('bench');
    const other = await pages.open('bench');
    await write(one, ['Litter depth', 'T03'], '25');
    await other.waitForFunction(() =>
      [...document.querySelectorAll('.strips .unseen')].some((each) =>
        each.textContent?.startsWith('Litter depth, T03, 25'),
      ),
    );
    expect(await figure(other, 'Litter depth', 'T03')).toBe('local25');
    await one.context().close();
    await other.context().close();
  });

  test('a block of 50 x 6 pasted writes what can be read, names what cannot, and is taken back in one', async () => {
    const page = await pages.open('bench');
    await box(page, 'Litter depth', 'T03').click();
    const block = Array.from({ length: 50 }, () => Array.from({ length: 6 }, () => '1 kg 1').join('\t')).join('\n');
    await page.evaluate((text) => {
      const data = new DataTransfer();
      data.setData('text/plain', text);
      const target = document.activeElement ?? document.body;
      target.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
    }, block);
    expect(await page.textContent('.last-said')).not.toBe('');
    expect(await figure(page, 'Litter depth', 'T07')).not.toContain('1 kg');
    await page.context().close();
  });
});

describe.each(['light', 'dark'] as const)('every place in %s', (scheme) => {
  let page: Page;
  beforeAll(async () => {
    page = await pages.open('bench', { width: 1280, height: 800, scheme });
  });
  afterAll(async () => {
    await page.context().close();
  });

  test.each(places.map(({ id, title }) => [title, id] as const))('%s has no accessibility fault', async (title, id) => {
    await page.goto(`${new URL(page.url()).origin}/#/${id}`);
    await page.waitForSelector(`h1:has-text("${title}")`);
    expect(await axeFaults(page)).toEqual([]);
  });
});

test('at 400 % zoom the bench can still be read and written', async () => {
  const page = await pages.open('bench', { width: 320, height: 256 });
  expect([await axeFaults(page), await figure(page, 'Drainage depth', 'T03')]).toEqual([[], '30']);
  await page.context().close();
});

test('no page complained, breached the content policy or asked for anything outside', () => {
  expect([pages.complaints, pages.strangers]).toEqual([[], []]);
});
