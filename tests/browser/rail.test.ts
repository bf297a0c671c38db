import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { placeGroups, type PlaceEntry } from '#shared-calc/contract/places.ts';
import { plain } from './bench-hands.ts';
import { keyboardComesTo, pressSeen, tabTo } from './focus-ring.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();
const entries = placeGroups.flatMap((group): readonly PlaceEntry[] => group.entries);

/** F6 cycles through the parts of a page, at most four. */
async function backToRail(page: Page): Promise<readonly string[]> {
  const unseen: string[] = [];
  for (let turn = 0; turn < 5; turn += 1) {
    unseen.push(...(await pressSeen(page, ['F6'])));
    if ((await page.locator('nav[aria-label="Places"] :focus').count()) > 0) return unseen;
  }
  return [...unseen, 'F6 never comes to the rail'];
}

describe('the places with the keyboard', () => {
  test('each is reached from the rail and left by F6, and the keyboard is always seen', async () => {
    const page = await pages.begin('jobs');
    const unseen: string[] = [];
    for (const { title, parts } of entries) {
      for (const [at, part] of parts.entries()) {
        unseen.push(...(await tabTo(page, title)), ...(await pressSeen(page, ['Enter'])));
        if (at > 0) {
          unseen.push(...(await tabTo(page, part.part)));
          // The link that was pressed goes with its view; the heading of the next one takes the keyboard.
          await page.keyboard.press('Enter');
        }
        await page.locator('h1', { hasText: part.title }).waitFor();
        unseen.push(...(await backToRail(page)));
      }
    }
    expect(unseen).toEqual([]);
  });

  test('all of them are in sight in the smallest usual window', async () => {
    const page = await pages.begin('jobs');
    await page.setViewportSize({ width: 1280, height: 800 });
    const besides = await page
      .getByRole('navigation', { name: 'Places' })
      .evaluate((rail) => [rail.scrollHeight - rail.clientHeight, rail.scrollWidth - rail.clientWidth]);
    expect(besides).toEqual([0, 0]);
  });
});

describe('the open job', () => {
  test('stands over its places, and another is taken from its list by keys; the place stays', async () => {
    const page = await pages.begin('jobs');
    for (const title of ['Reading room', 'Quay shelf']) {
      await page.getByRole('button', { name: 'New job', exact: true }).click();
      await page.getByLabel('Title').last().fill(title);
      await page.keyboard.press('Enter');
      await page.waitForSelector(`main > header p:has-text("${title}")`);
    }
    const unseen = await tabTo(page, 'Plan');
    unseen.push(...(await pressSeen(page, ['Enter'])));
    await page.locator('h1', { hasText: 'Plan' }).waitFor();
    unseen.push(...(await tabTo(page, 'J03 is open. Take another job.Quay shelf')));
    unseen.push(...(await pressSeen(page, ['Enter'])));
    await keyboardComesTo(page, 'J03 Quay shelf enquiry');
    unseen.push(...(await pressSeen(page, ['ArrowUp', 'Enter'])));
    await page.waitForSelector('main > header p:has-text("Reading room")');
    const head = page.getByRole('button', { name: 'Take another job' });
    expect([unseen, await page.locator('h1').innerText(), plain(await head.innerText())]).toEqual([
      [],
      'Plan',
      expect.stringMatching(/^J02 .*Reading room$/),
    ]);
  });
});

noneComplained(pages);
