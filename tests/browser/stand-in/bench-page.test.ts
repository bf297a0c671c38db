import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { axeFaults } from '#tests/browser/axe-faults.ts';
import { openPages } from '#tests/browser/pages.ts';
import type { Pages } from '#tests/browser/pages.ts';
import { buildStandIn } from './build.ts';

let pages: Pages;

beforeAll(async () => {
  pages = await openPages(await buildStandIn());
});
afterAll(async () => {
  await pages.close();
});

const chosen = (page: Page) => page.evaluate(() => document.body.dataset['chosen']);
const box = (page: Page, spoken: string) =>
  page.locator(':is([role="gridcell"], [role="rowheader"])', {
    has: page.locator('[data-part="spoken"]', { hasText: spoken }),
  });
const saidOf = (page: Page) => page.textContent('footer [role="alert"]');
const boxText = (page: Page, row: string, column: string) =>
  page.evaluate(
    ([wanted, strip]) => {
      const cells = [...document.querySelectorAll('[role="gridcell"]')];
      const cell = cells.find((each) =>
        each.querySelector('[data-part="spoken"]')?.textContent.startsWith(`${wanted}, ${strip},`),
      );
      return cell?.querySelector('[data-form]')?.textContent ?? 'not drawn';
    },
    [row, column],
  );

describe('the bench with the keyboard', () => {
  test('arrows walk the boxes, and the working panel follows', async () => {
    const page = await pages.open('bench');
    const walked = [await chosen(page)];
    for (const key of [
      'ArrowLeft',
      'ArrowUp',
      'Home',
      'End',
      'Control+Home',
      'Control+End',
      'ArrowDown',
      'Control+ArrowUp',
    ]) {
      await page.keyboard.press(key);
      walked.push(await chosen(page));
    }
    expect(walked).toEqual([
      'drain_gap T08',
      'drain_gap T07',
      'drainage_need T07',
      'drainage_need T03',
      'drainage_need T08',
      '',
      '',
      '',
      '',
    ]);
    await page.close();
  });

  test('what is typed replaces the box, Enter goes down, Escape leaves it as it was', async () => {
    const page = await pages.open('bench');
    await page.keyboard.type('12');
    await page.keyboard.press('Enter');
    expect([await boxText(page, 'Drain gap', 'T08'), await chosen(page)]).toEqual(['local12', 'drain_room T08']);
    await page.keyboard.press('F2');
    await page.keyboard.type('9');
    await page.keyboard.press('Escape');
    expect([await boxText(page, 'Room for water', 'T08'), await chosen(page)]).toEqual(['8.64', 'drain_room T08']);
    await page.close();
  });

  test('a refused text stays in the field with its cure', async () => {
    const page = await pages.open('bench');
    await page.keyboard.type('dam_hieght');
    await page.keyboard.press('Enter');
    expect([
      await page.textContent('[popover="manual"] p[data-fault]'),
      await page.inputValue('[popover="manual"] textarea'),
    ]).toEqual(['Nothing called dam_hieght. Did you mean dam_height?', 'dam_hieght']);
    await page.close();
  });

  test('Shift with arrows chooses a range, Delete takes all of it back to the house', async () => {
    const page = await pages.open('bench');
    await page.keyboard.press('Shift+ArrowLeft');
    await page.keyboard.press('Shift+ArrowDown');
    expect(await page.locator('[data-in-range]').count()).toBe(4);
    await page.keyboard.press('Delete');
    expect(await saidOf(page)).toBe('4 back to house');
    await page.close();
  });

  test('the grid is one stop of Tab: out of it either way, and back to the chosen box', async () => {
    const page = await pages.open('bench');
    const inGrid = () => page.evaluate(() => document.activeElement?.closest('[role="grid"]') !== null);
    const stops: boolean[] = [];
    for (const key of ['Tab', 'Shift+Tab', 'Shift+Tab', 'Tab']) {
      await page.keyboard.press(key);
      stops.push(await inGrid());
    }
    await page.keyboard.press('ArrowUp');
    expect([stops, await chosen(page)]).toEqual([[false, true, false, true], 'drainage_need T08']);
    await page.close();
  });

  test('Tab goes from the cards’ kit and count out of the grid, and from there to the chosen box', async () => {
    const page = await pages.open('bench');
    await page.getByLabel('How many of T08').focus();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('ArrowUp');
    expect(await chosen(page)).toBe('drainage_need T08');
    await page.close();
  });

  test('a kit level and a count are taken from the card, and what is no count is refused', async () => {
    const page = await pages.open('bench');
    await page.getByLabel('Kit level of T07').selectOption('show');
    await page.getByLabel('How many of T07').fill('2');
    await page.keyboard.press('Enter');
    await page.getByLabel('How many of T08').fill('1.5');
    await page.keyboard.press('Enter');
    expect([
      await page.getByLabel('Kit level of T07').inputValue(),
      await page.getByLabel('How many of T07').inputValue(),
      await page.getByLabel('How many of T08').inputValue(),
      await saidOf(page),
    ]).toEqual(['show', '2', '1', 'How many of T08: write a whole number from 1 to 999.']);
    await page.close();
  });

  test('Enter on a section closes it and keeps the keyboard there', async () => {
    const page = await pages.open('bench');
    await page.keyboard.press('Control+ArrowUp');
    await page.keyboard.press('Enter');
    expect(await box(page, 'Drain gap, T08').count()).toBe(0);
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowDown');
    expect(await chosen(page)).toBe('drainage T08');
    await page.close();
  });
});

describe('the bench with the clipboard', () => {
  test('a copied range is pasted as tab-separated text, one value fills the range', async () => {
    const page = await pages.open('bench');
    await page.keyboard.press('Shift+Home');
    const copied = await page.evaluate(() => {
      const data = new DataTransfer();
      document.activeElement?.dispatchEvent(
        new ClipboardEvent('copy', { clipboardData: data, bubbles: true, cancelable: true }),
      );
      return data.getData('text/plain');
    });
    await page.evaluate(() => {
      const data = new DataTransfer();
      data.setData('text/plain', '14 mm\n');
      document.activeElement?.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    });
    expect([copied, await saidOf(page)]).toEqual([
      '10\t10\t15',
      'wrote drain_gap of T03 14 mm; drain_gap of T07 14 mm; drain_gap of T08 14 mm',
    ]);
    await page.close();
  });

  test('the same goes to the right over the range', async () => {
    const page = await pages.open('bench');
    await page.keyboard.press('Shift+Home');
    await page.keyboard.press('Alt+Shift+ArrowRight');
    expect(await saidOf(page)).toBe('wrote drain_gap of T08 10');
    await page.close();
  });
});

describe('the bench with the mouse', () => {
  test('a range is drawn, and the double click opens a box', async () => {
    const page = await pages.open('bench');
    await box(page, 'Soil at the front, T03').hover();
    await page.mouse.down();
    await box(page, 'Soil, placed, T07').hover();
    await page.mouse.up();
    const drawn = await page.locator('[data-in-range]').count();
    await box(page, 'Soil at the front, T07').dblclick();
    expect([drawn, await page.inputValue('[popover="manual"] textarea')]).toEqual([6, '90']);
    await page.close();
  });

  test('a section opens and closes by its button', async () => {
    const page = await pages.open('bench');
    await page.getByRole('button', { name: 'Capping' }).click();
    expect(await box(page, 'Capping depth, T03').count()).toBe(1);
    await page.close();
  });
});

describe('the page', () => {
  test('has no accessibility fault in light and in dark, which differ in colours alone', async () => {
    const page = await pages.open('bench');
    await page.keyboard.type('drai');
    const faults = [await axeFaults(page)];
    await page.emulateMedia({ colorScheme: 'dark' });
    faults.push(await axeFaults(page, 'colours'));
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    faults.push(await axeFaults(page, 'colours'));
    await page.emulateMedia({ colorScheme: 'light' });
    faults.push(await axeFaults(page));
    expect(faults).toEqual([[], [], [], []]);
    await page.close();
  });

  test('at 400 % zoom stands in one column and scrolls only downward', async () => {
    const page = await pages.open('bench', { width: 320, height: 256 });
    const [wide, inner] = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
    expect([wide, await axeFaults(page)]).toEqual([inner, []]);
    await page.close();
  });

  test('a window made smaller lays the bench anew, and the chosen box stays chosen', async () => {
    const page = await pages.open('bench');
    const width = () => page.locator('.ag-header-cell[col-id="column T03"]').evaluate((head) => head.clientWidth);
    const wide = await width();
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.waitForFunction(
      () => document.querySelector('.ag-header-cell[col-id="column T03"]')?.clientWidth === 200,
    );
    expect([wide, await width(), await page.locator('[role="gridcell"][data-chosen]').count()]).toEqual([226, 200, 1]);
    await page.close();
  });

  test('never meets the content policy or an error', () => {
    expect(pages.complaints()).toEqual([]);
  });
});
