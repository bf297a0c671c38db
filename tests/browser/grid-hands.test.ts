import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { boxOf, chosen, figures, goTo, plain, quietLine, stored } from './bench-hands.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();
const sizes = ['T03', 'T07', 'T08'];

/** Pastes as another program does that writes a table alone. */
function pasteTable(page: Page, html: string): Promise<void> {
  return page.evaluate((given) => {
    const data = new DataTransfer();
    data.setData('text/html', given);
    document.activeElement?.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
  }, html);
}

describe('the hands on the bench', () => {
  test('the Menu key opens the acts of a box; a letter goes to one, Escape back to the box', async () => {
    const page = await pages.begin('bench');
    await goTo(page, 'Litter depth', 'T07');
    await page.keyboard.press('Shift+F10');
    const menu = page.getByRole('menu');
    const first = plain(await page.locator(':focus').textContent());
    await page.keyboard.press('c');
    await page.keyboard.press('c');
    const next = plain(await page.locator(':focus').textContent());
    await page.keyboard.press('Escape');
    await menu.waitFor({ state: 'detached' });
    expect([first, next, await chosen(page)]).toEqual([
      'WriteF2',
      'Copy with namesAlt Shift C',
      'Litter depth, T07, 30 mm, house figure',
    ]);
  });

  test('the right button opens the acts of the box under it, and an act is done', async () => {
    const page = await pages.begin('bench');
    await boxOf(page, 'Litter depth', 'T08').click({ button: 'right' });
    await page.getByRole('menuitem', { name: 'Move T08 to the left' }).click();
    await stored(page, 'T08 moved');
    const heads = () => page.locator('[data-card] b').allTextContents();
    await expect.poll(heads).toEqual(['T03', 'T08', 'T07']);
  });

  test('two ranges are chosen by keys alone and written at once', async () => {
    const page = await pages.begin('bench');
    await goTo(page, 'Litter depth', 'T03');
    for (const key of ['Shift+ArrowRight', 'Alt+Shift+KeyA', 'ArrowRight']) await page.keyboard.press(key);
    for (const key of ['Home', 'ArrowUp', 'ArrowDown', 'End']) await page.keyboard.press(key);
    const inRange = await page.locator('[data-in-range]').count();
    await page.keyboard.type('25');
    await page.keyboard.press('Enter');
    expect([inRange, await figures(page, 'Litter depth', sizes)]).toEqual([3, ['25', '25', '25']]);
  });

  test('what is typed over a range goes into all of it, and is undone at once', async () => {
    const page = await pages.begin('bench');
    await goTo(page, 'Litter depth', 'T03');
    await page.keyboard.press('Shift+End');
    await page.keyboard.type('25');
    await page.keyboard.press('Enter');
    const written = await figures(page, 'Litter depth', sizes);
    await page.keyboard.press('Control+z');
    await page.waitForSelector('footer [role="alert"]:has-text("Undone")');
    expect([written, await figures(page, 'Litter depth', sizes)]).toEqual([
      ['25', '25', '25'],
      ['30', '30', '30'],
    ]);
  });

  test('a table of another program is pasted with its units, and what does not fit is said', async () => {
    const page = await pages.begin('bench');
    await goTo(page, 'Litter depth', 'T07');
    await pasteTable(page, '<table><tr><td>2&nbsp;cm</td><td>24</td><td>99</td></tr></table>');
    const written = await figures(page, 'Litter depth', sizes);
    expect([written, await quietLine(page)]).toEqual([
      ['30', '20', '24'],
      expect.stringContaining('1 column of what was pasted does not fit here.'),
    ]);
  });
});

describe('what is picked in a book', () => {
  test('a supplier is found by a part of the name and taken with Enter; Escape leaves who was there', async () => {
    const page = await pages.begin('material-book/M01/supplier');
    const listed = () => page.getByRole('option').allTextContents();
    const supplierOf = async (code: string) => plain(await boxOf(page, 'Supplier', code).textContent());
    await page.keyboard.type('pane cut');
    const byName = await listed();
    await page.keyboard.press('Escape');
    const left = await chosen(page);
    await page.keyboard.type('pane cut');
    await page.keyboard.press('Enter');
    expect([byName, left, await supplierOf('M01')]).toEqual([
      ['S-greavelGreavel Pane Cutters'],
      "Supplier, M01, Hollin Lane Growers' Supply",
      expect.stringMatching(/^Greavel Pane Cutters/),
    ]);
  });

  test('a day is picked from the calendar of its cell, by keys alone', async () => {
    const page = await pages.begin('rate-book/closed-days');
    await page.keyboard.press('Insert');
    await page.keyboard.press('Alt+ArrowDown');
    await page.locator('[role="dialog"] td :focus').waitFor();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    expect(await chosen(page)).toBe('First day, D01, 2027-03-09');
  });
});

describe('the columns of a book', () => {
  test('a heading sorts up, down and back; the book keeps it', async () => {
    const page = await pages.begin('tank-book');
    const head = page.getByRole('columnheader', { name: /^Height/ });
    const codes = () => page.getByRole('grid').getByRole('rowheader').allTextContents();
    const first = async () => (await codes())[0]?.slice(0, 3);
    await head.click();
    await expect.poll(() => head.getAttribute('aria-sort')).toBe('ascending');
    await head.click();
    await stored(page, 'tanks: sorted by Height, down');
    await expect.poll(first).toBe('T04');
    await page.reload();
    await expect.poll(first).toBe('T04');
    await head.click();
    await expect.poll(() => head.getAttribute('aria-sort')).toBeNull();
    expect(await first()).toBe('T01');
  });

  test('what a filter hides is said above the grid, and shown again', async () => {
    const page = await pages.begin('tank-book');
    const rows = () => page.getByRole('grid').getByRole('rowheader').count();
    const all = await rows();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ContextMenu');
    await page.getByRole('menuitem', { name: 'Filter …' }).press('Enter');
    await page.getByRole('checkbox', { name: 'rectangle' }).check();
    await page.getByRole('button', { name: 'Filter', exact: true }).click();
    const hidden = page.getByText('4 of 12 are hidden by the filter');
    await hidden.waitFor();
    await page.getByRole('button', { name: 'Show all' }).click();
    await hidden.waitFor({ state: 'detached' });
    await expect.poll(rows).toBe(all);
  });
});

noneComplained(pages);
