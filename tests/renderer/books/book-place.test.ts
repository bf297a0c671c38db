import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { openPages, type Pages } from '#tests/browser/pages.ts';
import { buildStandIn } from '#tests/renderer/places/stand-in/build.ts';

let pages: Pages;

beforeAll(async () => {
  pages = await openPages(await buildStandIn('books'));
});
afterAll(async () => {
  await pages.close();
});

const field = (page: Page, spoken: string | RegExp) =>
  page.locator(':is([role="gridcell"], [role="rowheader"])', {
    has: page.locator('[data-part="spoken"]', { hasText: spoken }),
  });
const spokenAt = (page: Page) => page.textContent('[data-chosen] [data-part="spoken"]');
const saidOf = (page: Page) => page.textContent('footer [role="alert"]');
const plainSpaces = (text: string) => text.replaceAll('\u00a0', ' ');
const undoes = (page: Page) => page.textContent('footer');

async function openBook(place: string): Promise<Page> {
  const page = await pages.open(place, { width: 1920, height: 1080 });
  await page.waitForSelector('[data-chosen]');
  return page;
}

async function clip(page: Page, kind: 'copy' | 'paste', text = ''): Promise<string> {
  return page.evaluate(
    ([event = '', given = '']) => {
      const data = new DataTransfer();
      data.setData('text/plain', given);
      const made = new ClipboardEvent(event, { clipboardData: data, bubbles: true, cancelable: true });
      document.activeElement?.dispatchEvent(made);
      return data.getData('text/plain');
    },
    [kind, text],
  );
}

describe('a book with the keyboard', () => {
  test('what is typed replaces the field, Enter goes down, and Undo takes it back', async () => {
    const page = await openBook('tank-book/T07/insideLengthMm');
    await field(page, 'Length, T07, 900 mm').click();
    await page.keyboard.type('910');
    await page.keyboard.press('Enter');
    const down = await spokenAt(page);
    await page.keyboard.press('Control+z');
    await page.waitForSelector('text=Undone: length of T07');
    await field(page, 'Length, T07, 900 mm').click();
    await page.keyboard.press('ArrowRight');
    expect([down, await spokenAt(page)]).toEqual(['Length, T08, 1200 mm', 'Depth, T07, 445 mm']);
    await page.context().close();
  });

  test('F2 opens a field as it is, Escape leaves it so, and a refusal stays at its place', async () => {
    const page = await openBook('tank-book/T07');
    await field(page, 'Dam, T07, 150 mm').click();
    await page.keyboard.press('F2');
    const opened = await page.inputValue('[popover="manual"] textarea');
    await page.keyboard.type(' deep?');
    await page.keyboard.press('Enter');
    const refused = await page.textContent('[popover="manual"] p[data-fault]');
    await page.keyboard.press('Escape');
    expect([opened, refused, await spokenAt(page)]).toEqual([
      '150',
      'Dam height: "150 deep?" is not a figure.',
      'Dam, T07, 150 mm',
    ]);
    await page.context().close();
  });

  test('a click elsewhere takes what was written and stays where it was made', async () => {
    const page = await openBook('tank-book/T07');
    await field(page, 'Dam, T07, 150 mm').click();
    await page.keyboard.type('140');
    await field(page, 'Length, T01, 300 mm').click();
    const taken = await field(page, 'Dam, T07, 140 mm').count();
    await page.keyboard.press('ArrowDown');
    expect([taken, await spokenAt(page)]).toEqual([1, 'Length, T02, 295 mm']);
    await page.context().close();
  });

  test('a range is filled right and down', async () => {
    const page = await openBook('tank-book');
    await field(page, 'Length, T02, 295 mm').click();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Alt+Shift+ArrowRight');
    const right = await field(page, 'Height, T02, 295 mm').count();
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Alt+Shift+ArrowDown');
    const down = await Promise.all(
      ['Length, T03, 295 mm', 'Depth, T03, 295 mm', 'Height, T03, 295 mm'].map((says) => field(page, says).count()),
    );
    expect([right, down]).toEqual([1, [1, 1, 1]]);
    await page.context().close();
  });

  test('another unit of the kind is taken over, another kind is refused', async () => {
    const page = await openBook('tank-book/T07');
    await field(page, 'Dam, T07, 150 mm').click();
    await page.keyboard.type('6 in');
    await page.keyboard.press('Enter');
    const inches = await field(page, /Dam, T07, 6.in$/).count();
    await field(page, 'Dam, T07').click();
    await page.keyboard.type('6 L');
    await page.keyboard.press('Enter');
    expect([inches, await page.textContent('[popover="manual"] p[data-fault]')]).toEqual([
      1,
      'Dam height is in mm, a length; "6 L" does not fit.',
    ]);
    await page.context().close();
  });

  test('a code stays as it was made, and says so', async () => {
    const page = await openBook('tank-book/T07');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.type('T');
    expect(await saidOf(page)).toContain('A code stays as it is');
    await page.context().close();
  });

  test('a range is copied as tab-separated text, and a block is pasted', async () => {
    const page = await openBook('tank-book');
    await field(page, 'Length, T01, 300 mm').click();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    const copied = await clip(page, 'copy');
    await clip(page, 'paste', '310\t320\n330\t340\n');
    const written = await Promise.all(
      ['Length, T01, 310 mm', 'Depth, T01, 320 mm', 'Length, T02, 330 mm', 'Depth, T02, 340 mm'].map((says) =>
        field(page, says).count(),
      ),
    );
    expect([copied, written, await undoes(page)]).toEqual([
      '300\t300\n295\t295',
      [1, 1, 1, 1],
      expect.stringContaining('4 fields'),
    ]);
    await page.context().close();
  });

  test('a paste with a bad field writes nothing and names it', async () => {
    const page = await openBook('tank-book');
    await field(page, 'Length, T01, 300 mm').click();
    await clip(page, 'paste', '310\t12 L\n');
    expect([await saidOf(page), await field(page, 'Length, T01, 300 mm').count()]).toEqual([
      'Nothing was written. T01: Inside depth is in mm, a length; "12 L" does not fit.',
      1,
    ]);
    await page.context().close();
  });

  test('find goes to a row by its code or a word of its name', async () => {
    const page = await openBook('plant-book');
    await page.keyboard.press('/');
    await page.keyboard.type('fittonia');
    await page.keyboard.press('Enter');
    expect(await spokenAt(page)).toBe('Plant, P08, Fittonia albivenis');
    await page.context().close();
  });
});

describe('rows of a book', () => {
  test('a tank is added with the next code and opened for its name, copied, and removed again', async () => {
    const page = await openBook('tank-book');
    await page.keyboard.press('Insert');
    await page.keyboard.type('Long low one');
    await page.keyboard.press('Enter');
    const added = await field(page, 'Name, T13, Long low one').count();
    await field(page, 'Name, T13').click();
    await page.getByRole('button', { name: 'Copy' }).click();
    await page.keyboard.press('Escape');
    const copied = await field(page, 'Name, T14, Long low one').count();
    await page.keyboard.press('Control+Delete');
    expect([added, copied, await field(page, 'T14').count()]).toEqual([1, 1, 0]);
    await page.context().close();
  });

  test('a tank that a job has stays, and the refusal names the job', async () => {
    const page = await openBook('tank-book/T07');
    await page.getByRole('button', { name: 'Remove', exact: true }).click();
    expect(await saidOf(page)).toBe('T07 stays: it is used by J01 Ferry waiting hall. Take it out there first.');
    await page.context().close();
  });

  test('a choice is made from its words', async () => {
    const page = await openBook('tank-book/T01');
    await field(page, 'Shape, T01, rectangle').click();
    await page.keyboard.type('c');
    await page.keyboard.press('ArrowDown');
    const offered = await page.locator('[role="option"]').allTextContents();
    await page.keyboard.press('Escape');
    await page.keyboard.type('hex');
    await page.keyboard.press('Enter');
    expect([offered, await field(page, 'Shape, T01, hexagon').count()]).toEqual([
      ['corner', 'cylinder', 'rectangle'],
      1,
    ]);
    await page.context().close();
  });
});

describe('prices', () => {
  test('a new price is another record from its day, and the old one stays', async () => {
    const page = await openBook('tank-book/T07');
    await field(page, 'Price, T07, 214.00 cr').click();
    await page.keyboard.type('219.5');
    await page.keyboard.press('Enter');
    await field(page, 'Price, T07').click();
    const rows = page.getByRole('table', { name: 'Prices of T07' }).locator('tbody tr');
    await expect
      .poll(() => rows.allTextContents())
      .toEqual(['2027-03-15 holds now219.50Remove', '2027-03-01 214.00Remove']);
    await page.context().close();
  });

  test('a price from a day to come is set at the right and holds not yet', async () => {
    const page = await openBook('material-book/M04');
    await page.getByLabel('New price of 38 L of M04').fill('30.50');
    await page.getByLabel('from of 38 L of M04').fill('2027-05-01');
    await page.getByRole('button', { name: 'Set the price' }).nth(1).click();
    expect(
      await page.getByRole('complementary').locator('section').nth(1).locator('tbody tr').allTextContents(),
    ).toEqual(['2027-05-01 still to come30.50Remove', '2027-03-01 holds now29.00Remove']);
    await page.context().close();
  });

  test('a pack is added to a material and needs a price until it has one', async () => {
    const page = await openBook('material-book/M04');
    await page.getByLabel('Amount in a pack of M04').fill('1 gal');
    await page.getByRole('button', { name: 'Add the pack' }).click();
    expect([
      await page.getByRole('complementary').locator('h3').allTextContents(),
      await field(page, 'Packs and prices, M04').textContent(),
    ]).toEqual([
      ['Pack of 3.785411784 L', 'Pack of 6 L', 'Pack of 38 L', 'Another pack'],
      expect.stringContaining('needs a price'),
    ]);
    await page.context().close();
  });
});

describe('a tank by its outside size', () => {
  test('panes, seam and frame are taken off and shown, then taken', async () => {
    const page = await openBook('tank-book/T01');
    const write = (label: string, text: string) => page.getByLabel(label, { exact: true }).fill(text);
    await write('Length outside', '912');
    await write('Depth outside', '457');
    await write('Height outside', '614');
    await write('Glass', '6');
    await write('Base, if thicker', '10');
    await write('Frame, top and foot', '4');
    const shown = (await page.getByRole('complementary').locator('[data-part="put-in"]').allTextContents()).map(
      plainSpaces,
    );
    await page.getByRole('button', { name: 'Use these measurements' }).click();
    const taken = await Promise.all(
      ['Length, T01, 900 mm', 'Depth, T01, 445 mm', 'Height, T01, 600 mm', 'Base, T01, 10 mm'].map((says) =>
        field(page, says).count(),
      ),
    );
    expect([shown, taken]).toEqual([
      [
        'Length: 912 mm less 2 panes of 6 mm = 900 mm',
        'Depth: 457 mm less 2 panes of 6 mm = 445 mm',
        'Height: 614 mm less the base of 10 mm and 4 mm of frame = 600 mm',
      ],
      [1, 1, 1, 1],
    ]);
    await page.context().close();
  });
});

describe('a list taken in', () => {
  const offer = async (page: Page, act: string, text: string) => {
    await page.getByRole('button', { name: act }).click();
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: /Choose/ }).click();
    await (await chooser).setFiles({ name: 'list.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
    await page.getByRole('dialog').getByRole('status').waitFor();
  };

  test('shows what it would do, and takes it in as one edit', async () => {
    const page = await openBook('tank-book');
    await offer(page, 'Import a list', 'code,shape,length,height,dam\nT07,,,,140\nT20,cylinder,300,12 in,100\n');
    const shown = await page.getByRole('dialog').locator('tbody tr').allTextContents();
    await page.getByRole('dialog').getByRole('button', { name: 'Import' }).click();
    expect([shown, await field(page, /Height, T20, 12.in$/).count(), await undoes(page)]).toEqual([
      ['2T07changeddam', '3T20newshape, length, height, dam'],
      1,
      expect.stringContaining('list of tanks, list.csv'),
    ]);
    await page.context().close();
  });

  test('of prices takes what can be read, and says of a bad row why it is left', async () => {
    const page = await openBook('material-book');
    await offer(
      page,
      'Import prices',
      'material,pack,unit,price,from\nM01,45,L,33.00,2027-04-01\nM99,1,L,2,2027-04-01\n',
    );
    const dialog = page.getByRole('dialog');
    const said = await dialog.getByRole('status').textContent();
    const bad = await dialog.getByRole('row', { name: /M99/ }).textContent();
    await dialog.getByRole('button', { name: 'Import' }).click();
    expect([said, bad, await undoes(page)]).toEqual([
      '1 row gives 1 price; 1 left.',
      expect.stringContaining('Nothing called M99 in the books of materials, tanks and plants. Did you mean M09?'),
      expect.stringContaining('1 price of'),
    ]);
    await page.context().close();
  });
});
