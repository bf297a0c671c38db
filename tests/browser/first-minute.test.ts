import { readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Records } from '#shared-calc/records/records.ts';
import { chosen, figures, goTo, plain, quietLine, seenBox, stored, write } from './bench-hands.ts';
import { pageDay } from './served-book.ts';
import { useServedBook } from './use-served-book.ts';
import { readIn, withValues, writeIn } from './write-in.ts';

const sizes = ['T03', 'T07', 'T08'] as const;
const pages = useServedBook();
let page: Page;

function beside(name: string): string {
  return path.join(path.dirname(pages.book()), name);
}

/** Through the rail, and on to a part of its entry. */
async function walkTo(entry: string, title = entry, part?: string): Promise<void> {
  await page.getByRole('link', { name: entry, exact: true }).click();
  if (part !== undefined) await page.getByRole('link', { name: part, exact: true }).click();
  await page.locator('h1', { hasText: title }).waitFor();
}

/** Opens a dialog of the workshop's place. */
async function openDialog(name: string): Promise<void> {
  await walkTo('Workshop');
  await page.getByRole('button', { name, exact: true }).click();
  await page.waitForSelector('dialog[open]');
}

async function dialogGone(): Promise<void> {
  await page.locator('dialog[open]').waitFor({ state: 'detached' });
}

async function act(name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).last().click();
}

async function backOnBench(): Promise<void> {
  await walkTo('Size bench');
  await page.waitForSelector('[role="gridcell"]');
}

async function savedBench(): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), act('Save as CSV')]);
  return readFileSync(await download.path(), 'utf8');
}

function countOf({ recipe, line, job, size, move, packPrice, supplier, tank }: Records) {
  const kinds = { recipe, line, job, size, move, packPrice, supplier, tank };
  return Object.fromEntries(Object.entries(kinds).map(([kind, all]) => [kind, all.size]));
}

describe('the demo workshop', () => {
  beforeAll(async () => {
    page = await pages.begin('bench');
    await page.waitForSelector('[role="gridcell"]');
  });

  test('opens on the size bench, with three sizes at work and a price for each', async () => {
    const cards = await page.locator('[data-card] b').allInnerTexts();
    await goTo(page, 'Oak leaves, dry', 'T03');
    const leaves = await figures(page, 'Oak leaves, dry', sizes);
    const prices = await figures(page, 'Price', sizes);
    expect([
      plain(await page.textContent('h1')),
      cards.map(plain),
      leaves,
      prices.every((price) => price !== ''),
    ]).toEqual(['Size bench', [...sizes], ['79.72', '161.24', '289.87'], true]);
  });

  test('is copied to a file that the browser saves, and the copy says the same', async () => {
    await openDialog('Save a copy');
    const [copy] = await Promise.all([page.waitForEvent('download'), act('Save the copy')]);
    await dialogGone();
    await copy.saveAs(beside('Copy.loamwright'));
    expect([copy.suggestedFilename(), plain(await quietLine(page))]).toEqual([
      'Copy of page.loamwright',
      expect.stringContaining('A copy of page.loamwright is saved by the browser.'),
    ]);
    expect(readIn(beside('Copy.loamwright'), countOf)).toEqual(readIn(pages.book(), countOf));
  });

  test('shows and takes a decimal comma once the workshop counts so, and its lists are read back right', async () => {
    await backOnBench();
    await goTo(page, 'Oak leaves, dry', 'T07');
    const points = parse(await savedBench());
    await walkTo('Workshop');
    await page.getByLabel('Decimal sign').selectOption('comma');
    await stored(page, 'decimal sign of the workshop');
    await backOnBench();
    await goTo(page, 'Oak leaves, dry', 'T07');
    const shown = await figures(page, 'Oak leaves, dry', sizes);
    const dear = await figures(page, 'Price', ['T07']);
    const commas = parse(await savedBench(), { delimiter: ';' });
    await write(page, ['Litter depth', 'T07'], '12,5');
    await stored(page, 'litter depth of T07 to 12,5 mm');
    await goTo(page, 'Litter depth', 'T07');
    // By hand: 1.1 * 12.2 g/L over 0.4005 m2 of 12.5 mm.
    expect([shown, dear, await chosen(page), await figures(page, 'Oak leaves, dry', ['T07'])]).toEqual([
      ['79,72', '161,24', '289,87'],
      [expect.stringMatching(/^\d\.\d{3},\d\d$/)],
      'Litter depth, T07, 12,5 mm, local figure',
      ['67,18'],
    ]);
    expect(commas.map((row) => row.map((cell) => (/^-?\d+,\d+$/.test(cell) ? cell.replace(',', '.') : cell)))).toEqual(
      points,
    );
    expect(await openedText()).toBe('12,5 mm');
  });

  test('brings a backup of the day back after a look at what would change, and Undo takes that back', async () => {
    await openDialog('Restore a backup');
    await page.getByRole('button', { name: pageDay }).click();
    await page.waitForSelector('dialog[open] table');
    const changes = (await page.locator('dialog[open] tbody tr').allInnerTexts()).map(plain);
    await act('Restore it');
    await dialogGone();
    await stored(page, `backup of ${pageDay} brought back`);
    await backOnBench();
    await goTo(page, 'Litter depth', 'T07');
    const back = await chosen(page);
    await page.keyboard.press('Control+z');
    await page.waitForSelector('footer [role="alert"]:has-text("Undone")');
    // One local value is removed, and the workshop uses a decimal point again.
    expect([changes, back, await chosen(page)]).toEqual([
      ['the workshop 0 1 0', 'local values 0 0 1'],
      'Litter depth, T07, 30 mm, house figure',
      'Litter depth, T07, 12,5 mm, local figure',
    ]);
  });

  /** The text in the selected cell when it is opened. */
  async function openedText(): Promise<string> {
    await page.keyboard.press('F2');
    const text = await page.inputValue('[popover="manual"] textarea');
    await page.keyboard.press('Escape');
    return text;
  }
});

describe('a book of one’s own', () => {
  /** A book made by its name lies in the program's own folder, where the recent books are noted. */
  let ownBook = '';

  beforeAll(async () => {
    await openDialog('New book');
    await page.getByLabel('What it begins with').selectOption('house');
    ownBook = path.join(path.dirname(pages.book()), '..', 'Own.loamwright');
    await page.getByLabel('Name of the book').fill('Own');
    await act('Make it');
    await dialogGone();
  });

  test('has the house recipes, and none of the demo’s tanks, jobs, stock, prices and suppliers', () => {
    const demo = readIn(pages.book(), countOf);
    const own = readIn(ownBook, countOf);
    expect(own).toEqual({ ...demo, job: 0, size: 0, move: 0, packPrice: 0, supplier: 0, tank: 0 });
  });

  test('has the function book and says calmly where there is nothing yet', async () => {
    await walkTo('Books', 'Function book', 'Functions');
    const functions = await page.locator('main').innerText();
    await walkTo('Jobs');
    const jobs = plain(await page.getByRole('main').getByText('There is no job yet').textContent());
    await walkTo('Buying', 'Store', 'Store');
    const store = plain(await page.textContent('main'));
    expect([functions.includes('layer_volume'), jobs, store.includes('T03')]).toEqual([
      true,
      'There is no job yet. Make the first',
      false,
    ]);
  });

  test('leads from Today to a first job, where every quantity is worked and the prices are asked for', async () => {
    await walkTo('Size bench');
    await page.getByRole('link', { name: 'Begin with what a first quote needs' }).click();
    const start = page.getByRole('region', { name: 'To a first quote' });
    const open = async (name: string) => {
      await start.getByRole('button', { name: new RegExp(`^${name}`) }).click();
      return start.getByRole('group', { name });
    };
    const tank = await open('First tank');
    const measures: readonly (readonly [string, string])[] = [
      ['Name', 'Shelf tank'],
      ['Length', '600'],
      ['Depth', '450'],
      ['Height', '450'],
      ['Dam', '150'],
      ['Glass', '6'],
    ];
    for (const [field, text] of measures) {
      await tank.getByLabel(field, { exact: true }).fill(text);
    }
    await tank.getByRole('button', { name: 'Add the tank' }).click();
    await stored(page, 'tank T01 added');
    // What is asked next unfolds by itself.
    const job = start.getByRole('group', { name: 'First job' });
    await job.getByLabel('Title').fill('Reading room');
    await job.getByRole('button', { name: 'Begin the job' }).click();
    await start.getByRole('button', { name: /^Prices .*needs \d+ prices/ }).waitFor();
    await walkTo('Size bench');
    await page.locator('[data-card]').waitFor();
    // By hand: 0.6 * 0.45 m2 of 40 mm, 2 % of it settling, 3 % of it waste.
    await expect.poll(async () => (await seenBox(page, 'Expanded clay, loose', 'T01'))?.figure).toBe('11.35');
    expect(readIn(ownBook, countOf)).toMatchObject({ job: 1, size: 1, tank: 1 });
  });
});

describe('a book that does not open', () => {
  test('chosen as a file it is named with the reason, and the open one stays', async () => {
    page = await pages.begin('workshop');
    await openDialog('Open a book');
    await chooseFile('List.loamwright', Buffer.from('a shopping list, and no book at all'));
    const said = plain(await page.getByRole('dialog').getByRole('alert').textContent());
    await page.keyboard.press('Escape');
    await backOnBench();
    expect([said, await page.locator('[data-card]').count()]).toEqual(['List.loamwright is not a book.', 3]);
  });

  test('as the page is opened leaves it no dead end: it says why, and leads to another book', async () => {
    writeIn(pages.book(), [withValues({ 'T07.litter': '20 mm' })]);
    await openDialog('Save a copy');
    const [copy] = await Promise.all([page.waitForEvent('download'), act('Save the copy')]);
    const saved = readFileSync(await copy.path());
    await dialogGone();
    // The book is sent in a form that this page does not know, as by a later program.
    await page.route('**/call/book.read', async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ response: answer, body: (await answer.text()).replace('"line":', '"later":') });
    });
    await page.reload();
    const alert = page.getByRole('main').getByRole('alert').first();
    const says = plain(await alert.textContent());
    await page.unroute('**/call/book.read');
    await act('Open another book');
    await chooseFile('Copy.loamwright', saved);
    await alert.waitFor({ state: 'detached' });
    await backOnBench();
    await goTo(page, 'Litter depth', 'T07');
    expect([says, await chosen(page)]).toEqual([
      expect.stringMatching(/^[A-Z].*\.$/),
      'Litter depth, T07, 20 mm, local figure',
    ]);
  });

  async function chooseFile(name: string, buffer: Buffer): Promise<void> {
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), act('Choose a file')]);
    await chooser.setFiles({ name, mimeType: 'application/octet-stream', buffer });
  }

  test('no page asked for anything outside', () => {
    expect(pages.strangers).toEqual([]);
  });
});
