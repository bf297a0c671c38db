import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { places } from '#shared-calc/contract/places.ts';
import { axeFaults } from './axe-faults.ts';
import { chosen, goTo, write } from './bench-hands.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('jobs/J01');
});

/** Goes to another view of the same page, with its data loaded. */
async function walkTo(place: string): Promise<void> {
  await page.evaluate((hash) => (location.hash = hash), `#/${place}`);
  const title = places.find(({ id }) => id === place.split('/')[0])?.title ?? '';
  await page.locator('h1', { hasText: title }).waitFor();
  if (place.startsWith('bench')) await page.waitForSelector('[role="gridcell"]');
  if (place.endsWith('-book') && place !== 'function-book') await page.waitForSelector('[role="gridcell"]');
}

/** Faults in either theme; the themes differ only in colours. */
async function faultsInBoth(within = 'html'): Promise<Readonly<Record<string, readonly string[]>>> {
  const light = await axeFaults(page, undefined, within);
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await axeFaults(page, 'colours', within);
  await page.emulateMedia({ colorScheme: 'light' });
  return { light, dark };
}

const none = { light: [], dark: [] };

describe('every place', () => {
  test.each(places)(
    '$title can be read by eye and by a reader, in light and in dark; it fits a narrow window',
    async ({ id }) => {
      await walkTo(id);
      expect(await faultsInBoth()).toEqual(none);
      await page.setViewportSize({ width: 320, height: 256 });
      const besides = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      await page.setViewportSize({ width: 1440, height: 900 });
      expect(besides).toBe(0);
    },
  );
});

/** Ids that several elements share: a field would be described by another's text. */
function idsTwice(): Promise<readonly string[]> {
  return page.evaluate(() => {
    const ids = [...document.querySelectorAll('[id]')].map((each) => each.id);
    return ids.filter((id, at) => ids.indexOf(id) !== at);
  });
}

describe('the bench with a field open over a box', () => {
  test('field, panel and cards have ids of their own', async () => {
    await walkTo('bench');
    await goTo(page, 'Litter depth', 'T07');
    const still = await idsTwice();
    await page.keyboard.press('F2');
    await page.locator('[popover="manual"] textarea').waitFor();
    const open = await idsTwice();
    await page.keyboard.press('Escape');
    expect([still, open]).toEqual([[], []]);
  });
});

const list = [
  'material,label,unit,packs',
  'pumice_fine,"Pumice, fine",L,10 L; 45 L',
  'pumice_coarse,"Pumice, coarse",furlong,10 L',
].join('\n');

/** Chooses a list for a dialog that asks for one. */
async function chooseList(text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a file' }).click(),
  ]);
  await chooser.setFiles({ name: 'list.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  await page.waitForSelector('dialog[open] [role="status"]');
}

interface Dialog {
  readonly dialog: string;
  readonly place: string;
  /** The button that opens it. */
  readonly act: string;
  readonly and?: () => Promise<void>;
}

const dialogs: readonly Dialog[] = [
  { dialog: 'the backups', place: 'workshop', act: 'Restore a backup' },
  { dialog: 'the copy', place: 'workshop', act: 'Save a copy' },
  { dialog: 'a new book', place: 'workshop', act: 'New book' },
  { dialog: 'another book', place: 'workshop', act: 'Open a book' },
  {
    dialog: 'a list and what it would bring',
    place: 'material-book',
    act: 'Import a list',
    and: () => chooseList(list),
  },
  { dialog: 'a new job', place: 'jobs', act: 'New job' },
  { dialog: 'the issue of a quote', place: 'quotes/J01', act: 'Issue' },
];

describe('every dialog', () => {
  test('of the help can be read in light and in dark', async () => {
    await walkTo('jobs');
    await page.keyboard.press('F1');
    await page.getByRole('complementary', { name: 'Help' }).waitFor();
    for (const part of await page.locator('#help-panel details').all())
      await part.evaluate((each) => each.setAttribute('open', ''));
    const faults = await faultsInBoth('#help-panel');
    await page.keyboard.press('F1');
    expect(faults).toEqual(none);
  });

  test.each(dialogs)('of $dialog can be read in light and in dark', async ({ place, act, and }) => {
    await walkTo(place);
    await page.getByRole('button', { name: act, exact: true }).click();
    await page.waitForSelector('dialog[open]');
    await and?.();
    const faults = await faultsInBoth('dialog[open]');
    await page.keyboard.press('Escape');
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
    expect(faults).toEqual(none);
  });

  test('a box being written in, with what may be written next, can be read in light and in dark', async () => {
    await walkTo('bench');
    await goTo(page, 'Soil at the front', 'T07');
    await page.keyboard.type('dam');
    await page.waitForSelector('[role="option"]');
    const offers = await faultsInBoth('[popover="manual"]');
    await page.locator('[popover="manual"] textarea').fill('sol_gross * 2');
    await page.locator('[popover="manual"] p[data-fault]').first().waitFor();
    const refused = await faultsInBoth('[popover="manual"]');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    expect([offers, refused]).toEqual([none, none]);
  });
});

describe('a price list', () => {
  const rows = ['No;What;Pack;Price', 'H-1;Expanded clay;10 L;$10.20', 'H-2;Bark, fine;1 bag;$22.00'];

  /** Drops a file on the window, wherever it is. */
  async function drop(name: string, text: string): Promise<void> {
    const data = await page.evaluateHandle(
      ([called, held]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([held ?? ''], called ?? ''));
        return transfer;
      },
      [name, text],
    );
    await page.dispatchEvent('h1', 'drop', { dataTransfer: data });
  }

  /** Writes in a cell by the keyboard. */
  async function put(row: number, column: string, text: string): Promise<void> {
    await page.getByRole('gridcell', { name: `${column}, row ${row},` }).click();
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }

  test('dropped on any place is matched by the keyboard, read in light and in dark, and taken as one edit', async () => {
    await walkTo('jobs');
    await drop('clay.pdf', 'x');
    await page.getByText('clay.pdf is neither a book nor a price list').waitFor();
    await drop('spring.csv', rows.join('\n'));
    await page.getByRole('gridcell', { name: 'H-1' }).waitFor();
    await page.getByLabel('Whose list it is').selectOption('S-hollin');
    await put(1, 'Is our', 'M01');
    await put(2, 'Is our', 'M06');
    await put(2, 'Pack', '8 L');
    const status = page.getByRole('main').getByRole('status').first();
    await expect.poll(() => status.innerText()).toBe('2 rows give 1 price and 1 new pack.');
    expect(await faultsInBoth()).toEqual(none);
    await page.getByRole('button', { name: 'Import prices' }).click();
    await expect.poll(() => status.innerText()).toBe('No row gives anything new; 2 in the book already.');
    await page.keyboard.press('Control+z');
    await expect.poll(() => status.innerText()).toBe('2 rows give 1 price and 1 new pack.');
  });
});

describe('every paper, as it is printed', () => {
  const papers = ['quotes/J01', 'jobs/J01/needs', 'cards/J01/build', 'cards/J01/handover'] as const;
  test.each(papers)('%s can be read', async (place) => {
    await walkTo(place);
    await page.emulateMedia({ media: 'print' });
    await page.waitForSelector('article');
    const faults = await axeFaults(page);
    await page.emulateMedia({ media: null });
    // The first heading is the view's and is only on the screen; a paper begins at the second.
    expect(faults.filter((fault) => !fault.startsWith('page-has-heading-one'))).toEqual([]);
  });
});

describe('the bench at four times its size', () => {
  test('is still read, and a box of it written', async () => {
    await walkTo('bench');
    await page.setViewportSize({ width: 320, height: 256 });
    await write(page, ['Litter depth', 'T07'], '25');
    await goTo(page, 'Litter depth', 'T07');
    const inSight = await page.locator('[data-chosen]').evaluate((cell) => {
      const { left, right, top, bottom } = cell.getBoundingClientRect();
      return left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight;
    });
    expect([await chosen(page), inSight, await axeFaults(page)]).toEqual([
      'Litter depth, T07, 25 mm, local figure',
      true,
      [],
    ]);
  });
});

noneComplained(pages);
