import path from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { serveBook } from '#electron/host/serve-book.ts';
import { figures, goTo, plain, quietLine, seenBox, stored, write } from './bench-hands.ts';
import { builtPage, pageDay } from './served-book.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';
import { readIn } from './write-in.ts';

const sizes = ['T03', 'T07', 'T08'] as const;
const pages = useServedBook();

/** Waits until a cell of a page reads like this. */
async function readsSoon(page: Page, spoken: string): Promise<void> {
  await page.waitForFunction(
    (said) =>
      [...document.querySelectorAll('[data-part="spoken"]')].some(
        (each) => each.textContent?.replaceAll('\u00a0', ' ') === said,
      ),
    spoken,
    { polling: 50 },
  );
}

/** Two windows on the same book, both on the litter; each test writes its own depths. */
let one: Page;
let other: Page;

beforeAll(async () => {
  one = await pages.begin('bench');
  other = await pages.beside('bench');
  for (const page of [one, other]) await goTo(page, 'Litter depth', 'T03');
});

/** Holds back a page's next write until it is released. */
async function holdNextWrite(page: Page): Promise<() => void> {
  let letGo = (): void => undefined;
  const released = new Promise<void>((done) => (letGo = done));
  await page.route(
    '**/call/book.apply',
    async (route) => {
      await released;
      await route.continue();
    },
    { times: 1 },
  );
  return () => letGo();
}

describe('two windows on one book', () => {
  test('edits of different boxes made at the same moment are both kept', async () => {
    const letGo = await holdNextWrite(other);
    await write(other, ['Litter depth', 'T08'], '46');
    await write(one, ['Litter depth', 'T03'], '26');
    await stored(one, 'litter depth of T03 to 26 mm');
    letGo();
    await stored(other, 'litter depth of T08 to 46 mm');
    await readsSoon(one, 'Litter depth, T08, 46 mm, local figure');
    await readsSoon(other, 'Litter depth, T03, 26 mm, local figure');
    const both = await Promise.all([one, other].map((page) => figures(page, 'Litter depth', sizes)));
    expect(both).toEqual([
      ['26', '30', '46'],
      ['26', '30', '46'],
    ]);
  });

  test('of two edits of one box the second is refused and named, and never written over the first', async () => {
    await write(one, ['Litter depth', 'T07'], '20');
    await readsSoon(other, 'Litter depth, T07, 20 mm, local figure');
    const letGo = await holdNextWrite(other);
    await write(other, ['Litter depth', 'T07'], '99');
    await write(one, ['Litter depth', 'T07'], '25');
    await stored(one, 'litter depth of T07 to 25 mm');
    letGo();
    await readsSoon(other, 'Litter depth, T07, 25 mm, local figure');
    await other.waitForSelector('footer [data-refused]:not(:empty)');
    const said = plain(await other.textContent('footer [role="alert"]'));
    const inFile = readIn(pages.book(), ({ localValue }) => [...localValue.values()])
      .filter(({ size, line }) => size === 'J01-T07' && line === 'litter')
      .map(({ text }) => text);
    expect([said, await figures(other, 'Litter depth', ['T07']), inFile]).toEqual([
      expect.stringContaining('Not kept: litter depth of T07 to 99 mm'),
      ['25'],
      ['25 mm'],
    ]);
  });

  test('a field being written in is left alone by what others do, and then goes in on top of it', async () => {
    await goTo(other, 'Litter depth', 'T08');
    await other.keyboard.type('4');
    await write(one, ['Litter depth', 'T03'], '27');
    await readsSoon(other, 'Litter depth, T03, 27 mm, local figure');
    await other.keyboard.type('7');
    await other.keyboard.press('Enter');
    await readsSoon(one, 'Litter depth, T08, 47 mm, local figure');
    expect(await figures(other, 'Litter depth', ['T03', 'T08'])).toEqual(['27', '47']);
  });

  test('two programs on one book see each other’s edits too', async () => {
    const log: string[] = [];
    const folder = path.dirname(pages.book());
    const second = await serveBook({
      path: pages.book(),
      page: builtPage,
      today: () => pageDay,
      recentFile: path.join(folder, 'second-recent.json'),
      lastPlaceFile: path.join(folder, 'second-place.json'),
      log: (text) => log.push(text),
    });
    if (!second.ok) throw new Error(second.fault.says);
    const far = await one.context().newPage();
    await far.goto(`${second.value.newLink()}#/bench`);
    await far.waitForSelector('[role="gridcell"]');
    await goTo(far, 'Litter depth', 'T08');
    await write(one, ['Litter depth', 'T08'], '35');
    await readsSoon(far, 'Litter depth, T08, 35 mm, local figure');
    await write(far, ['Litter depth', 'T08'], '50');
    await readsSoon(one, 'Litter depth, T08, 50 mm, local figure');
    const price = [await seenBox(one, 'Price', 'T08'), await seenBox(far, 'Price', 'T08')].map((box) => box?.figure);
    await far.close();
    await second.value.close();
    expect([price[0] === price[1], log]).toEqual([true, []]);
  });

  test('a window of the same browser needs no link, and one of another browser is told how to come in', async () => {
    const { origin } = new URL(one.url());
    const [beside, stranger] = [await one.context().newPage(), await pages.open('jobs')];
    await beside.goto(`${origin}/#/jobs`);
    await beside.waitForSelector('h1:text-is("Jobs")');
    await stranger.evaluate(() => sessionStorage.clear());
    await stranger.reload();
    const says = await stranger.getByRole('main').getByRole('alert').textContent();
    await stranger.context().close();
    await beside.close();
    expect(says).toContain('This window has not been let in.');
  });

  test('each sees the other’s edits, sizes and undone edits, with prices, without being asked', async () => {
    await write(one, ['Litter depth', 'T03'], '25');
    await readsSoon(other, 'Litter depth, T03, 25 mm, local figure');
    await write(other, ['Litter depth', 'T08'], '45');
    await readsSoon(one, 'Litter depth, T08, 45 mm, local figure');
    const prices = [await figures(one, 'Price', sizes), await figures(other, 'Price', sizes)];
    expect(prices[0]).toEqual(prices[1]);

    await one.bringToFront();
    await one.getByRole('button', { name: 'Take a size' }).first().click();
    await one.getByRole('button', { name: /^T05 / }).click();
    await other.waitForSelector('[data-card] b:text-is("T05")');
    await other.keyboard.press('Control+z');
    await one.waitForSelector('[data-card] b:text-is("T05")', { state: 'detached' });
    expect(await quietLine(one)).toContain('Redo T05 taken');
  });
});

noneComplained(pages);

describe('more tabs than a browser opens connections', () => {
  test('each of eight answers, and hears what another writes, also when the first one is left', async () => {
    const tabs = [await pages.begin('bench')];
    while (tabs.length < 8) tabs.push(await pages.beside('bench'));
    const [first, second, last] = [tabs[0], tabs[1], tabs.at(-1)];
    if (!first || !second || !last) throw new Error('no tabs');
    await write(last, ['Litter depth', 'T03'], '31');
    await readsSoon(second, 'Litter depth, T03, 31 mm, local figure');
    await first.goto(new URL('/.vite/license.md', first.url()).href);
    await write(second, ['Litter depth', 'T03'], '32');
    await readsSoon(last, 'Litter depth, T03, 32 mm, local figure');
    expect(await figures(last, 'Litter depth', ['T03'])).toEqual(['32']);
  });
});
