import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { added, emptyChange, updated } from '#shared-calc/records/change.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { ok } from '#shared-calc/result.ts';
import { boxOf, figures, goTo, quietLine, stored } from './bench-hands.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';
import { withSizes, writeIn, type Act } from './write-in.ts';

const sizes = ['T01', 'T02', 'T03', 'T04', 'T05', 'T06'] as const;
const rows = 58;
/** All these lines and six sizes are drawn at once. */
const wide = { width: 2560, height: 2000 };
const pages = useServedBook();
let page: Page;

/** The demo's job with six sizes, on a page with access to the clipboard. */
beforeAll(async () => {
  page = await pages.begin('bench', (book) => writeIn(book, [withSizes(sizes)]));
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
});

async function chooseBlock(): Promise<void> {
  await goTo(page, 'Shelf rating', 'T01');
  await boxOf(page, 'Price before tax', 'T06').click({ modifiers: ['Shift'] });
}

async function copied(): Promise<readonly (readonly string[])[]> {
  await page.keyboard.press('Control+c');
  const text = await page.evaluate(() => navigator.clipboard.readText());
  return text.split('\n').map((row) => row.split('\t'));
}

/** As another program writes it: every line ends with CR LF, also the last. */
async function paste(block: readonly (readonly string[])[]): Promise<void> {
  const text = block.map((row) => `${row.join('\t')}\r\n`).join('');
  await page.evaluate((given) => navigator.clipboard.writeText(given), text);
  await page.keyboard.press('Control+v');
}

interface SeenBlock {
  readonly figure: string;
  readonly well: boolean;
}

/** What the cells of the selected range show, row by row. */
function seenBlock(): Promise<readonly (readonly SeenBlock[])[]> {
  return page.evaluate(() => {
    const cells = [...document.querySelectorAll('[data-in-range]')];
    const byRow = Map.groupBy(cells, (cell) => Math.round(cell.getBoundingClientRect().top));
    return [...byRow]
      .toSorted(([a], [b]) => a - b)
      .map(([, row]) =>
        row
          .toSorted((a, b) => a.getBoundingClientRect().left - b.getBoundingClientRect().left)
          .map((cell) => ({
            figure: figureIn(cell),
            well: cell.querySelector('[data-form="well"]') !== null,
          })),
      );

    function isHidden(painted: Element | null): boolean {
      return painted !== null && getComputedStyle(painted).visibility === 'hidden';
    }

    /**
     * An open section shows no headline. A check is copied as yes or no, as in the list of the bench; a guessed figure
     * that a check turns on looks like it, but has its number.
     */
    function figureIn(cell: Element): string {
      const state = cell.querySelector<HTMLElement>('[data-form="flat"]')?.dataset['state'] ?? '';
      const figure = partIn(cell, 'figure');
      if (isHidden(cell.querySelector('[data-form]'))) return '';
      if (/^-?[\d.,]+$/.test(figure) || !['stop', 'watch', 'advice', 'holds'].includes(state)) return figure;
      if (partIn(cell, 'said') === 'may not hold') return 'may not hold';
      return state === 'holds' ? 'yes' : 'no';
    }

    function partIn(cell: Element, part: string): string {
      return cell.querySelector(`[data-part="${part}"]`)?.textContent ?? '';
    }
  });
}

/** A full figure, rounded like the displayed one; words are unchanged. */
function shownLike(text: string, shown: string): string {
  const figure = Number(text.replaceAll(',', ''));
  if (text === '' || Number.isNaN(figure)) return text;
  const decimals = shown.split('.')[1]?.length ?? 0;
  const [whole = '', ...rest] = figure.toFixed(decimals).split('.');
  return [shown.includes(',') ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole, ...rest].join('.');
}

describe('a block of 58 lines and 6 sizes', () => {
  beforeAll(() => page.setViewportSize(wide));

  test('copied, it is what is shown, in full; pasted back with every well changed, it is one edit', async () => {
    await chooseBlock();
    const before = await copied();
    const seen = await seenBlock();
    const shown = before.map((row, at) => row.map((text, size) => shownLike(text, seen[at]?.[size]?.figure ?? '')));
    expect([before.length, before.every((row) => row.length === sizes.length)]).toEqual([rows, true]);
    expect(shown).toEqual(seen.map((row) => row.map(({ figure }) => figure)));

    const isFigure = (row: number, size: number) =>
      (seen[row]?.[size]?.well ?? false) && !Number.isNaN(Number(before[row]?.[size]));
    const more = before.map((row, at) =>
      row.map((text, size) => (isFigure(at, size) ? String(Number(text) + size + 1) : text)),
    );
    const changed = more.flat().filter((text, at) => text !== before.flat()[at]).length;
    await paste(more);
    await stored(page, `${changed} boxes of Ferry waiting hall`);
    const lines = ['Shelf rating', 'Air gap under the mesh', 'Rise to the back', 'Moisture at start', 'Litter depth'];
    const written = await Promise.all(lines.map((line) => figures(page, line, sizes)));
    expect([changed, written]).toEqual([
      30,
      [
        ['101', '102', '103', '104', '105', '106'],
        ['11', '12', '13', '14', '15', '16'],
        ['41', '42', '43', '44', '45', '46'],
        ['13', '14', '15', '16', '17', '18'],
        ['31', '32', '33', '34', '35', '36'],
      ],
    ]);
    await page.keyboard.press('Control+z');
    await page.waitForSelector('footer [role="alert"]:has-text("Undone")');
    await chooseBlock();
    expect(await copied()).toEqual(before);
  });

  test('with boxes that cannot be read nothing is written, and each of them is named with its cure', async () => {
    await chooseBlock();
    const before = await copied();
    const [gap, litter, kit] = [await rowOf('Air gap under the mesh'), await rowOf('Litter depth'), await rowOf('Kit')];
    const bad = before.map((texts, at) =>
      texts.map((text, size) => {
        if (at === gap && size === 1) return '12 L';
        if (at === litter && size === 2) return 'thick';
        if (at === kit && size === 5) return 'luxury';
        return at === litter ? '25' : text;
      }),
    );
    await paste(bad);
    await page.waitForSelector('footer [data-refused]:not(:empty)');
    const said = (await page.textContent('footer [role="alert"]')) ?? '';
    expect([said, await quietLine(page), await figures(page, 'Litter depth', sizes)]).toEqual([
      expect.stringMatching(
        /^Kit, T06: .*basic.* Nor can be read: Air gap under the mesh, T02; Litter depth, T03\. Nothing was written\.$/,
      ),
      expect.stringContaining('Undo J01: sizes'),
      ['30', '30', '30', '30', '30', '30'],
    ]);
    expect(await copied()).toEqual(before);
  });
});

describe('one box and many', () => {
  beforeAll(() => page.setViewportSize({ width: 1920, height: 900 }));

  test('one text fills the whole range, many go out from one box, and what lies past the edge is left out', async () => {
    await goTo(page, 'Air gap under the mesh', 'T01');
    await page.keyboard.press('Shift+End');
    await paste([['14 mm']]);
    const filled = await figures(page, 'Air gap under the mesh', sizes);

    await goTo(page, 'Litter depth', 'T05');
    await paste([['21', '22', '23']]);
    const many = await figures(page, 'Litter depth', sizes);

    // Two lines of three sizes, laid twice along six sizes.
    await goTo(page, 'Air gap under the mesh', 'T01');
    await page.keyboard.press('Shift+End');
    await paste([['1', '2', '3']]);
    const twice = await figures(page, 'Air gap under the mesh', sizes);

    await goTo(page, 'Litter depth', 'T01');
    await page.keyboard.press('Shift+End');
    await page.keyboard.press('Control+x');
    const cut = await figures(page, 'Litter depth', sizes);
    await goTo(page, 'Air gap under the mesh', 'T01');
    await page.keyboard.press('Control+v');
    expect({ filled, many, twice, cut, moved: await figures(page, 'Air gap under the mesh', sizes) }).toEqual({
      filled: ['14', '14', '14', '14', '14', '14'],
      many: ['30', '30', '30', '30', '21', '22'],
      twice: ['1', '2', '3', '1', '2', '3'],
      cut: ['30', '30', '30', '30', '30', '30'],
      moved: ['30', '30', '30', '30', '21', '22'],
    });
  });

  test('a rule is copied as a rule, and works by the figures of the size it is pasted to', async () => {
    await goTo(page, 'Soil at the front', 'T01');
    await page.keyboard.type('dam_height - drainage - 25 mm');
    await page.keyboard.press('Enter');
    await goTo(page, 'Soil at the front', 'T01');
    const rule = await copied();
    await goTo(page, 'Soil at the front', 'T04');
    await page.keyboard.press('Control+v');
    await stored(page, 'soil at the front of T04 to dam_height - drainage - 25 mm');
    expect([rule, await figures(page, 'Soil at the front', ['T01', 'T04'])]).toEqual([
      [['dam_height - drainage - 25 mm']],
      // Dams of 75 and 110 mm over 20 and 30 of drainage.
      ['30', '55'],
    ]);
  });
});

/** The row of a line within the selected range. */
function rowOf(label: string): Promise<number> {
  return page.evaluate((wanted) => {
    const top = (cell: Element) => Math.round(cell.getBoundingClientRect().top);
    const tops = [...new Set([...document.querySelectorAll('[data-in-range]')].map(top))].toSorted((a, b) => a - b);
    const named = [...document.querySelectorAll('[role="rowheader"] [title]')].find(
      (each) => each.textContent === wanted,
    );
    const cell = named?.closest('[role="rowheader"]');
    return cell ? tops.indexOf(top(cell)) : -1;
  }, label);
}

describe('prices that are missing', () => {
  const unpriced = ['T03', 'M07', 'M25b'];

  test('pasted as a column they make the sum whole, in one edit that is undone', async () => {
    const bare = await pages.begin('prices/J01', (book) => writeIn(book, [withoutPrices(unpriced)]));
    await bare.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    const said = bare.locator('main > header');
    await expect.poll(() => said.textContent()).toMatch(/at least .*3 prices missing/);
    await bare.evaluate(() => navigator.clipboard.writeText('96.00\r\n13.50\r\n46.50\r\n'));
    await bare.keyboard.press('Control+v');
    await expect.poll(() => said.textContent()).not.toMatch(/at least|missing;/);
    await bare.keyboard.press('Control+z');
    await expect.poll(() => said.textContent()).toMatch(/at least .*3 prices missing/);
  });
});

describe('measurements that are missing', () => {
  test('pasted as a column each goes where it belongs, in one edit that is undone; an empty one is left', async () => {
    const bare = await pages.begin('bench/J01', (book) => writeIn(book, [withoutDams(['T03', 'T07', 'T08'])]));
    await bare.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await bare.getByRole('button', { name: '3 measures missing' }).click();
    const said = bare.locator('main > header');
    await expect.poll(() => said.textContent()).toMatch(/at least .*3 measures missing/);
    await bare.evaluate(() => navigator.clipboard.writeText('75\r\n\r\n4 in\r\n'));
    await bare.keyboard.press('Control+v');
    await expect.poll(() => said.textContent()).toMatch(/1 measure missing/);
    await bare.keyboard.press('Control+z');
    await expect.poll(() => said.textContent()).toMatch(/3 measures missing/);
  });
});

noneComplained(pages);

function withoutPrices(materials: readonly string[]): Act {
  return ({ pack, packPrice }) => {
    const gone = [...packPrice.values()].filter((price) => materials.includes(pack.get(price.pack)?.material ?? ''));
    return ok({ ...emptyChange('prices gone'), removed: gone.map((record) => added('packPrice', record)) });
  };
}

function withoutDams(tanks: readonly string[]): Act {
  return ({ tank }) => {
    const measured = [...tank.values()].filter(({ id }) => tanks.includes(id));
    const to = (from: Tank): Tank => withoutUndefined({ ...from, damHeightMm: undefined });
    return ok({ ...emptyChange('dams gone'), updated: measured.map((from) => updated('tank', from, to(from))) });
  };
}
