import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { chosen, figures, goTo, plain, quietLine, seenBox, stored } from './bench-hands.ts';
import { keyboardComesTo, keyboardOn, pressSeen, tabTo } from './focus-ring.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();

const sizes = ['T03', 'T07', 'T08'] as const;

/** Presses keys one by one; returns the focused cell after each. */
async function walked(page: Page, keys: readonly string[]): Promise<readonly string[]> {
  const boxes: string[] = [];
  for (const key of keys) {
    await page.keyboard.press(key);
    boxes.push((await keyboardOn(page)).on);
  }
  return boxes;
}

describe('the main job with no hand on the mouse', () => {
  test('a job is begun, sizes taken, the house changed, a size changed, its working read and a list saved', async () => {
    const page = await pages.begin('jobs');
    const unseen = [...(await tabTo(page, 'New job')), ...(await pressSeen(page, ['Enter']))];
    await keyboardComesTo(page, 'Title');
    await page.keyboard.type('By keys alone');
    await page.keyboard.press('Enter');
    await page.waitForSelector('h1:has-text("Jobs")');
    await page.waitForSelector('main > header p:has-text("By keys alone")');
    unseen.push(...(await tabTo(page, 'Its size bench')));
    await page.keyboard.press('Enter');
    await page.waitForSelector('p:has-text("No size stands here yet")');
    expect(await keyboardOn(page)).toEqual({ on: 'Size bench', wrong: '' });
    unseen.push(...(await tabTo(page, 'Take a size')));
    for (const size of sizes) {
      unseen.push(...(await pressSeen(page, ['Enter'])));
      await keyboardComesTo(page, 'Find a tank by its name or size');
      await page.keyboard.type(size);
      await page.keyboard.press('Enter');
      await page.waitForSelector(`[data-card] b:text-is("${size}")`);
      await keyboardComesTo(page, 'Take a size');
    }
    expect(unseen).toEqual([]);

    unseen.push(...(await pressSeen(page, ['F6'])), ...(await tabTo(page, 'Books')));
    unseen.push(...(await pressSeen(page, ['Enter'])));
    await page.locator('h1', { hasText: 'House recipe' }).waitFor();
    unseen.push(...(await pressSeen(page, ['/'])));
    await page.keyboard.type('Rise to the back');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.closest('[data-line="soil_rise"]'));
    unseen.push(...(await pressSeen(page, ['Enter', 'Control+a', '0', 'Enter', 'Enter'])));
    await stored(page, 'rise to the back of the house to 0 mm');
    unseen.push(...(await tabTo(page, 'Size bench')), ...(await pressSeen(page, ['Enter'])));
    await page.waitForSelector('[role="gridcell"]');

    await goTo(page, 'Oak leaves, dry', 'T07');
    const before = await figures(page, 'Oak leaves, dry', sizes);
    await goTo(page, 'Litter depth', 'T07');
    unseen.push(...(await pressSeen(page, ['2', '0', 'Enter'])));
    expect([unseen, await chosen(page), await figures(page, 'Oak leaves, dry', sizes), before]).toEqual([
      [],
      'Oak leaves, dry, T07, 107.49 g, house rule',
      ['79.72', '107.49', '289.87'],
      ['79.72', '161.24', '289.87'],
    ]);

    await page.getByRole('complementary').getByRole('heading', { name: 'Oak leaves, dry' }).waitFor();
    unseen.push(
      ...(await pressSeen(page, ['F6'])),
      ...(await tabTo(page, 'Litter, dry')),
      ...(await pressSeen(page, ['Enter'])),
    );
    await page.getByRole('complementary').getByRole('heading', { name: 'Litter, dry' }).waitFor();
    expect(unseen).toEqual([]);
    unseen.push(...(await tabTo(page, 'up to Oak leaves, dry')), ...(await pressSeen(page, ['Enter'])));
    unseen.push(...(await pressSeen(page, ['F6', 'F6'])), ...(await tabTo(page, 'Save as CSV')));
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    unseen.push(...(await pressSeen(page, ['Control+z', 'Control+z', 'Control+y'])));
    await stored(page, 'rise to the back of the house to 0 mm');
    expect([unseen, download.suggestedFilename(), await figures(page, 'Oak leaves, dry', sizes)]).toEqual([
      [],
      'J02 bench.csv',
      before,
    ]);
  });
});

describe('a line of the recipe that was written', () => {
  test('has the keyboard again once it is said why, and keeps it where another line was pressed meanwhile', async () => {
    const page = await pages.begin('recipe');
    const rule = (line: string) => page.locator(`[data-line="${line}"] button`);
    await rule('room_summer').dblclick();
    await page.locator('[data-line="room_summer"] textarea').fill('24 degC');
    // Enter again, in the dialog that asks why, puts it in force.
    const unseen = await pressSeen(page, ['Enter', 'Enter']);
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    const back = (await keyboardOn(page)).on;
    await rule('room_summer').dblclick();
    await page.locator('[data-line="room_summer"] textarea').fill('25 degC');
    await rule('public_site').click();
    await page.keyboard.press('Enter');
    await stored(page, 'room, hottest day of the house to 25 °C');
    expect([unseen, back, (await keyboardOn(page)).on]).toEqual([
      [],
      'Room, hottest day: 24 degC',
      'Room, hottest day: 25 degC',
    ]);
  });
});

describe('the bench with the keyboard', () => {
  let page: Page;
  beforeAll(async () => {
    page = await pages.begin('bench');
  });

  test('/ finds a line, a size and a place; F8 and Shift with it go through the flags and round again', async () => {
    await page.keyboard.press('/');
    await page.keyboard.type('moisture at st');
    await page.keyboard.press('Enter');
    const line = await chosen(page);
    await page.keyboard.press('/');
    await page.keyboard.type('nothing of that name');
    await page.keyboard.press('Enter');
    const invalid = await page.getAttribute('input[type="search"]', 'aria-invalid');
    await page.keyboard.press('F8');
    const flags = [await chosen(page), ...(await walked(page, ['F8', 'F8', 'Shift+F8', 'Shift+F8'])).map(plain)];
    const unseen = (await keyboardOn(page)).wrong;
    await page.keyboard.press('/');
    await page.keyboard.type('Plant book');
    await page.keyboard.press('Enter');
    await page.waitForSelector('h1:has-text("Plant book")');
    await page.goBack();
    await page.waitForSelector('[role="gridcell"]');
    expect({ line, invalid, flags: flags.map((each) => each.slice(0, 60)), unseen }).toEqual({
      line: 'Moisture at start, T03, 12 %, house figure',
      invalid: 'true',
      flags: [
        'Loose mix below the lip, T03, may not hold: Loose mix stands',
        'Loose mix below the lip, T07, advice: Loose mix stands over ',
        'Loose mix below the lip, T08, advice: Loose mix stands over ',
        'Loose mix below the lip, T07, advice: Loose mix stands over ',
        'Loose mix below the lip, T03, may not hold: Loose mix stands',
      ],
      unseen: '',
    });
  });

  test('arrows, Home and End walk the boxes; with Ctrl to sections, ends and the foot; the ring is always seen', async () => {
    await goTo(page, 'Air gap under the mesh', 'T07');
    const steps = [
      ['ArrowDown', 'Room for water, T07, 4.81 L, house rule'],
      ['ArrowRight', 'Room for water, T08, 10.08 L, house rule'],
      ['ArrowRight', 'Room for water, T08, 10.08 L, house rule'],
      ['Home', 'Room for water, T03, 1.58 L, house rule'],
      ['ArrowLeft', 'Room for waterL'],
      ['ArrowRight', 'Room for water, T03, 1.58 L, house rule'],
      ['End', 'Room for water, T08, 10.08 L, house rule'],
      ['Control+ArrowLeft', 'Room for water, T03, 1.58 L, house rule'],
      ['Control+ArrowDown', 'Capping, T03, calcined clay 2.48 L'],
      ['Control+ArrowUp', 'Drainage, T03, clay 6.24 L'],
      ['Control+End', 'Flags, T08, 2 stop, 2 watch, 7 not known yet, 2 advice'],
      ['Control+Home', 'empty'],
      ['ArrowDown', 'Shelf rating, T03, 100.00 kg, house figure'],
    ] as const;
    const boxes = (
      await walked(
        page,
        steps.map(([key]) => key),
      )
    ).map(plain);
    await goTo(page, 'Air gap under the mesh', 'T07');
    const unseen = await pressSeen(
      page,
      steps.map(([key]) => key),
    );
    expect([boxes, unseen]).toEqual([steps.map(([, box]) => box), []]);
  });

  test('a range is chosen with Shift, filled right, taken back to the house, undone and done again', async () => {
    await goTo(page, 'Air gap under the mesh', 'T03');
    await page.keyboard.type('12');
    await page.keyboard.press('Shift+Enter');
    await page.keyboard.press('ArrowDown');
    const unseen = await pressSeen(page, ['Shift+End', 'Alt+Shift+ArrowRight']);
    const filled = await figures(page, 'Air gap under the mesh', sizes);
    const inRange = await page.locator('[data-in-range]').count();
    unseen.push(...(await pressSeen(page, ['Delete'])));
    const cleared = await figures(page, 'Air gap under the mesh', sizes);
    unseen.push(...(await pressSeen(page, ['Control+z'])));
    await page.waitForSelector('footer [role="alert"]:has-text("Undone")');
    const undone = await figures(page, 'Air gap under the mesh', sizes);
    unseen.push(...(await pressSeen(page, ['Control+Shift+z'])));
    await page.waitForSelector('footer [role="alert"]:has-text("Done again")');
    const again = await figures(page, 'Air gap under the mesh', sizes);
    expect({ filled, inRange, cleared, undone, again, unseen }).toEqual({
      filled: ['12', '12', '12'],
      inRange: 3,
      cleared: ['10', '10', '10'],
      undone: ['12', '12', '12'],
      again: ['10', '10', '10'],
      unseen: [],
    });
  });

  test('what is typed replaces, F2 and Enter open as it is, Escape leaves it, Enter and Tab go on', async () => {
    await goTo(page, 'Air gap under the mesh', 'T03');
    await page.keyboard.press('F2');
    const opened = await page.inputValue('[popover="manual"] textarea');
    await page.keyboard.type('5');
    await page.keyboard.press('Escape');
    const left = await chosen(page);
    await page.keyboard.press('Enter');
    const openedToo = await page.inputValue('[popover="manual"] textarea');
    await page.keyboard.press('Escape');
    await page.keyboard.type('12');
    const typed = await page.inputValue('[popover="manual"] textarea');
    await page.keyboard.press('Tab');
    const right = await chosen(page);
    await page.keyboard.type('13');
    await page.keyboard.press('Shift+Enter');
    expect([
      opened,
      left,
      openedToo,
      typed,
      right,
      await chosen(page),
      await figures(page, 'Air gap under the mesh', sizes),
    ]).toEqual([
      '10 mm',
      'Air gap under the mesh, T03, 10 mm, house figure',
      '10 mm',
      '12',
      'Air gap under the mesh, T07, 10 mm, house figure',
      'Expanded clay, loose, T07, 16.84 L, house rule',
      ['12', '13', '10'],
    ]);
  });

  test('the box the keyboard comes to is read with its new figure at once, all others soon after', async () => {
    await goTo(page, 'Litter depth', 'T08');
    await page.keyboard.type('24');
    const atOnce = await page.evaluate(() => {
      document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
      return document.querySelector('[data-chosen] [data-part="spoken"]')?.textContent ?? '';
    });
    await page.waitForFunction(() => {
      const boxes = [...document.querySelectorAll('[role="gridcell"]')].filter((box) =>
        box.querySelector('[data-part="figure"]'),
      );
      return boxes.every(
        (box) => box.textContent.split(box.querySelector('[data-part="figure"]')?.textContent ?? '').length > 2,
      );
    });
    expect(plain(atOnce)).toBe('Oak leaves, dry, T08, 231.90 g, house rule');
    await page.keyboard.press('Control+z');
  });

  test('a box is copied, cut and pasted', async () => {
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await goTo(page, 'Litter depth', 'T03');
    const unseen = await pressSeen(page, ['2', '1', 'Shift+Enter', 'ArrowDown']);
    unseen.push(...(await pressSeen(page, ['Control+c', 'ArrowRight', 'Control+v'])));
    await stored(page, 'litter depth of T07 to 21 mm');
    const copied = await figures(page, 'Litter depth', sizes);
    unseen.push(...(await pressSeen(page, ['ArrowLeft', 'Control+x'])));
    await page.waitForFunction(() => navigator.clipboard.readText().then((text) => text.startsWith('21')));
    unseen.push(...(await pressSeen(page, ['End', 'Control+v'])));
    await stored(page, 'litter depth of T08 to 21 mm');
    expect({ copied, moved: await figures(page, 'Litter depth', sizes), unseen }).toEqual({
      copied: ['21', '21', '30'],
      moved: ['30', '21', '21'],
      unseen: [],
    });
  });

  test('kit, count and the acts of a size are reached and done from its card', async () => {
    page = await pages.begin('bench');
    await goTo(page, 'Shelf rating', 'T07');
    const unseen = await pressSeen(page, ['ArrowUp', 'ArrowUp']);
    const head = (await keyboardOn(page)).on;
    unseen.push(...(await pressSeen(page, ['Enter'])), ...(await tabTo(page, 'Kit level of T07')));
    await page.keyboard.press('ArrowDown');
    await stored(page, 'kit of T07 to show');
    unseen.push(...(await tabTo(page, 'How many of T07')));
    await page.keyboard.press('Control+a');
    await page.keyboard.type('2');
    await page.keyboard.press('Enter');
    await stored(page, 'T07 times 2');
    await page.keyboard.press('Shift+Tab');
    unseen.push(...(await pressSeen(page, ['Enter', 'ArrowDown', 'Enter'])));
    await page.waitForSelector('[data-card] b:text-is("T07#2")');
    expect([head, unseen, await quietLine(page)]).toEqual(['T07', [], expect.stringContaining('T07')]);
    expect((await seenBox(page, 'Kit', 'T07'))?.spoken).toBe('Kit, T07, show, local choice');
  });
});

noneComplained(pages);
