import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import type { Locator, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { places } from '#shared-calc/contract/places.ts';
import { wrongBelow } from './below-field.ts';
import { chosen, goTo, plain, quietLine } from './bench-hands.ts';
import { hostileTexts, isRun, withHostileWords } from './hostile-texts.ts';
import { useServedBook } from './use-served-book.ts';
import { readIn, writeIn } from './write-in.ts';

/** All at once: markup for a page, a formula for a list, and hard to tell from the text around it. */
const worst = `=HYPERLINK("http://elsewhere.example")<img src=x onerror="window.ran=1">'";＝@\u202E\u{1FAB4}`;
const pages = useServedBook();
let page: Page;

async function walkTo(place: string): Promise<void> {
  await page.evaluate((hash) => (location.hash = hash), `#/${place}`);
  const title = places.find(({ id }) => id === place.split('/')[0])?.title ?? '';
  await page.locator('h1', { hasText: title }).waitFor();
}

/** Texts that became more than text on the current page. */
function came(): Promise<readonly string[]> {
  return page.evaluate(() => [
    ...('ran' in window ? ['a text ran'] : []),
    ...[...document.querySelectorAll('img[src="x"], iframe, [onerror], [onload], a[href^="javascript"]')].map(
      (each) => each.outerHTML,
    ),
  ]);
}

/** What went wrong since the last call. */
async function wrong(): Promise<readonly string[]> {
  return [...(await came()), ...pages.complaints(), ...pages.strangers];
}

async function list(button: string, delimiter = ','): Promise<readonly (readonly string[])[]> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  const text = readFileSync(await download.path(), 'utf8');
  return parse(text, { delimiter, relax_column_count: true, record_delimiter: '\r\n' });
}

describe('a book in which every word is hostile', () => {
  beforeAll(async () => {
    page = await pages.begin('jobs/J01', (book) => writeIn(book, [withHostileWords]));
  });

  const papers = [
    'jobs/J01/needs',
    'jobs/J01/pick-list',
    'quotes/J01',
    ...['survey', 'prep', 'build', 'watch', 'animals-in', 'handover', 'care'].map((card) => `cards/J01/${card}`),
    'cards/treatment',
    'cards/areas',
    'prepare/J01/checks/T07',
    'prepare/J01/watch/T07',
  ];
  test.each([...places.map(({ id }) => id), ...papers])('%s shows words as words, and runs none', async (place) => {
    await walkTo(place);
    expect(await wrong()).toEqual([]);
  });

  test('the words of the job stand on its card letter by letter', async () => {
    await walkTo('jobs/J01');
    const { title, client, note } = readIn(pages.book(), ({ job }) => job.get('J01')) ?? {};
    const card = page.getByRole('article', { name: 'Job J01' });
    expect([
      await card.getByLabel('Title').inputValue(),
      await card.getByLabel('Client', { exact: true }).inputValue(),
      await card.getByLabel('What else there is to know').inputValue(),
      plain(await card.locator('h2').first().textContent()),
    ]).toEqual([title, client, note, plain(`J01 ${title}`)]);
  });

  const lists = [
    ['bench/J01', 'Save as CSV'],
    ['needs', 'Save as CSV'],
    ['quotes/J01', 'Save as CSV'],
  ] as const;
  test.each(lists)('the list of %s has no cell that another program would work out', async (place, button) => {
    await walkTo(place);
    const rows = await list(button);
    expect([rows.length > 3, rows.flat().filter(isRun)]).toEqual([true, []]);
  });
});

interface FieldAt {
  readonly field: string;
  readonly place: string;
  /** The field, scrolled into view. */
  readonly find: () => Promise<Locator> | Locator;
}

const onJob = () => page.getByRole('article', { name: 'Job J01' });
const fields: readonly FieldAt[] = [
  { field: 'title of a job', place: 'jobs/J01', find: () => onJob().getByLabel('Title') },
  { field: 'client of a job', place: 'jobs/J01', find: () => onJob().getByLabel('Client', { exact: true }) },
  { field: 'note of a job', place: 'jobs/J01', find: () => onJob().getByLabel('What else there is to know') },
  { field: 'name of the workshop', place: 'workshop', find: () => page.getByLabel('Name', { exact: true }) },
  { field: 'letterhead', place: 'workshop', find: () => page.getByLabel('Letterhead, as printed on a quote') },
  { field: 'name of a line', place: 'recipe', find: () => lineField('Name in words') },
  { field: 'note of a line', place: 'recipe', find: () => lineField('Note') },
];

async function lineField(label: string): Promise<Locator> {
  await page.locator('[data-line="litter"] button').click();
  return page.getByRole('complementary').getByLabel(label, { exact: true });
}

/** The name of a row of a book, opened for editing. */
async function openName(row: string): Promise<Locator> {
  await page.locator(`[row-id="${row}"] [aria-colindex="2"]`).dblclick();
  return page.locator('[popover="manual"] textarea');
}

const names: readonly (readonly [what: string, place: string, row: string])[] = [
  ['tank', 'tank-book', 'T03'],
  ['material', 'material-book', 'M01'],
  ['plant', 'plant-book', 'P01'],
  ['culture', 'culture-book', 'C1'],
  ['supplier', 'rate-book/suppliers', 'S-hollin'],
];

describe('hostile words typed in a field', () => {
  beforeAll(async () => {
    page = await pages.begin('jobs/J01');
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  });

  test.each(fields)('as the $field are taken as they are typed', async ({ place, find }) => {
    await walkTo(place);
    const field = await find();
    await field.fill(worst);
    await field.blur();
    await walkTo('function-book');
    await walkTo(place);
    expect([await (await find()).inputValue(), await wrong()]).toEqual([worst, []]);
  });

  test.each(names)('as the name of a %s are taken as they are typed', async (_, place, row) => {
    await walkTo(place);
    await (await openName(row)).fill(worst);
    await page.keyboard.press('Enter');
    await page.locator('[popover="manual"]').waitFor({ state: 'hidden' });
    const stored = await (await openName(row)).inputValue();
    await page.keyboard.press('Escape');
    expect([stored, await wrong()]).toEqual([worst, []]);
  });

  test('stand there still when the program is started again', async () => {
    page = await pages.restart('jobs/J01');
    const stored: string[] = [];
    for (const { place, find } of fields) {
      await walkTo(place);
      stored.push(await (await find()).inputValue());
    }
    expect([stored, await wrong()]).toEqual([fields.map(() => worst), []]);
  });

  test.each(hostileTexts)('%s as the title of a job stays a title', async (_, text) => {
    await walkTo('jobs/J01');
    const title = onJob().getByLabel('Title');
    await title.fill(text);
    await title.press('Enter');
    await page.waitForFunction(
      (wanted) => document.querySelector('article h2')?.textContent === `J01 ${wanted}`,
      text.trim(),
    );
    await expect.poll(() => readIn(pages.book(), ({ job }) => job.get('J01')?.title)).toBe(text.trim());
    expect(await wrong()).toEqual([]);
  });

  test('NUL as the title of a job is saved as it is', async () => {
    const title = await sendTitle('a\0b');
    await page.locator('footer', { hasText: 'Saved' }).waitFor();
    await expect.poll(titleInBook).toBe('a\0b');
    expect([await title.inputValue(), await wrong()]).toEqual(['a\0b', []]);
  });

  const broken: readonly (readonly [what: string, text: string, says: string])[] = [
    ['half a letter', 'half \uD800', 'half a character'],
    ['ten thousand letters', 'w'.repeat(10_000), 'cannot be kept'],
  ];
  test.each(broken)(
    '%s is refused at the field, and Escape brings back the title in the book',
    async (_, text, says) => {
      const before = titleInBook();
      const title = await sendTitle(text);
      expect(await wrongBelow(title)).toContain(says);
      await title.press('Escape');
      expect([await title.inputValue(), titleInBook(), await wrong()]).toEqual([before, before, []]);
    },
  );

  const titleInBook = () => readIn(pages.book(), ({ job }) => job.get('J01')?.title);

  /** Bypasses the field's own limits, as another client may. Half a character passes through only as an escape. */
  async function sendTitle(text: string): Promise<Locator> {
    await walkTo('jobs/J01');
    const title = onJob().getByLabel('Title');
    await title.evaluate((field, given) => {
      (field as HTMLInputElement).value = JSON.parse(given) as string;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }, JSON.stringify(text));
    await title.press('Enter');
    return title;
  }
});

describe('hostile words where a figure or a name is asked for', () => {
  beforeAll(async () => {
    page = await pages.begin('bench');
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  });

  test('in a box, typed or pasted, are refused with the reason, and nothing is written', async () => {
    await goTo(page, 'Litter depth', 'T07');
    await page.keyboard.press('F2');
    await page.locator('[popover="manual"] textarea').fill(worst);
    await page.keyboard.press('Enter');
    const says = plain(await page.locator('[popover="manual"] p[data-fault]').first().textContent());
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await page.evaluate((text) => navigator.clipboard.writeText(text), worst.replace('"', ''));
    await page.keyboard.press('Control+v');
    await page.waitForSelector('footer [data-refused]:not(:empty)');
    expect([says, await quietLine(page), await chosen(page), await wrong()]).toEqual([
      expect.stringContaining('A rule has no = in front'),
      expect.stringContaining('Nothing to undo'),
      'Litter depth, T07, 30 mm, house figure',
      [],
    ]);
  });

  test('in the find field find nothing', async () => {
    await page.locator('input[type="search"]').fill(worst);
    await page.keyboard.press('Enter');
    expect([await page.getAttribute('input[type="search"]', 'aria-invalid'), await wrong()]).toEqual(['true', []]);
  });

  test('as the rule of a line are refused', async () => {
    await walkTo('recipe');
    await page.locator('[data-line="litter"] button').dblclick();
    const rule = page.locator('[data-line="litter"] textarea');
    await rule.fill(worst);
    await page.keyboard.press('Enter');
    const says = plain(await page.locator('[data-line="litter"] p[data-fault]').first().textContent());
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    expect([says, await wrong()]).toEqual([expect.stringContaining('A rule has no = in front'), []]);
  });

  test('as a price are refused', async () => {
    await walkTo('material-book');
    await page.locator('[row-id="M01"] [role="rowheader"]').first().click();
    const price = page.getByLabel('New price').first();
    await price.fill(worst);
    const invalid = await price.getAttribute('aria-invalid');
    expect([invalid, await wrong()]).toEqual(['true', []]);
  });

  test('as a reading of the probe are named by their row, and as the place of a batch stay words', async () => {
    await walkTo('prepare/leaves');
    await page.getByLabel('Leaves, loose').fill('43.51');
    await page.getByLabel('Collected at').fill(worst);
    await page.getByLabel('Collected at').press('Enter');
    await page.getByLabel(/^Core probe/).fill(`0 20\n${worst}\n70 121`);
    await page.getByRole('button', { name: 'Take the log' }).click();
    const says = plain(await page.getByRole('article').getByRole('status').first().textContent());
    const label = plain(await page.getByRole('list', { name: 'On the label' }).textContent());
    expect([says, label, await wrong()]).toEqual([
      expect.stringMatching(/^Row 2: /),
      expect.stringContaining('<img src=x onerror="window.ran=1">'),
      [],
    ]);
  });

  test('as a reading of the watch are named by their row', async () => {
    await walkTo('prepare/J01/watch/T07');
    await page.getByLabel(/^Readings: time/).fill(`0 22 90\n${worst}\n24 25 90`);
    const says = plain(
      await page.getByRole('main').getByRole('status').filter({ hasText: 'Row' }).first().textContent(),
    );
    expect([says, await wrong()]).toEqual([expect.stringMatching(/^Row 2: /), []]);
  });

  const listed = `material,label,unit,packs\nM91,"${worst.replaceAll('"', '""')}",L,10 L\n"${worst.replaceAll('"', '""')}",b,furlong,10 L`;
  test('in a list that is taken in are shown as words, row by row', async () => {
    await walkTo('material-book');
    await page.getByRole('button', { name: 'Import a list' }).click();
    await choose(listed);
    const refused = plain(await page.getByRole('group', { name: 'Refused rows' }).textContent());
    await choose(listed.split('\n').slice(0, 2).join('\n'));
    await page.getByRole('button', { name: 'Import', exact: true }).click();
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
    await page.waitForFunction(() => document.querySelector('footer')?.textContent?.includes('Saved'));
    expect([refused, readIn(pages.book(), ({ material }) => material.get('M91')?.label), await wrong()]).toEqual([
      expect.stringContaining('Row 3: '),
      worst,
      [],
    ]);
  });

  /** Chooses a list in the open dialog. */
  async function choose(text: string): Promise<void> {
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: /^Choose (a|another) file$/ }).click(),
    ]);
    await chooser.setFiles({ name: `${worst.slice(0, 20)}.csv`, mimeType: 'text/csv', buffer: Buffer.from(text) });
    await page.waitForSelector('dialog[open] [role="status"]');
  }
});
