import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { orderStanding } from '#shared-calc/buy/order-standing.ts';
import { plain } from './bench-hands.ts';
import { keyboardComesTo, tabTo } from './focus-ring.ts';
import { pageDay } from './served-book.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';
import { readIn } from './write-in.ts';

/*
 * One job from its enquiry to its handover with no hand on the mouse, over the rail: what is ordered, what comes in,
 * what is built, watched and handed over stands in the book at the end.
 */

const pages = useServedBook();
const unseen: string[] = [];

async function goTo(page: Page, name: string): Promise<void> {
  unseen.push(...(await tabTo(page, name)));
}

async function press(page: Page, name: string): Promise<void> {
  await goTo(page, name);
  await page.keyboard.press('Enter');
}

async function type(page: Page, field: string, text: string): Promise<void> {
  await goTo(page, field);
  await page.keyboard.type(text);
}

/** F6 goes round the parts of the page until the rail has the keyboard. */
async function overTheRail(page: Page, entry: string, heading = entry): Promise<void> {
  for (let turn = 0; turn < 5; turn += 1) {
    if ((await page.locator('nav[aria-label="Places"] :focus').count()) > 0) break;
    await page.keyboard.press('F6');
  }
  await press(page, entry);
  await page.locator('h1', { hasText: heading }).waitFor();
}

/** Waits until a part of the page says so. */
async function reads(page: Page, words: string, part = '#work'): Promise<void> {
  await expect
    .poll(async () => plain(await page.locator(part).first().innerText()), { interval: 25, timeout: 8000 })
    .toContain(words);
}

/** Presses a button of the dialog that is open; something always stands against a move. */
async function inDialog(page: Page, button: string): Promise<void> {
  await page.getByRole('dialog').waitFor();
  await press(page, button);
  await page.getByRole('dialog').waitFor({ state: 'detached' });
}

async function moveOn(page: Page, state: string, isReasonWanted = false): Promise<void> {
  await press(page, `Move on to ${state}`);
  await page.getByRole('dialog').waitFor();
  if (isReasonWanted) {
    await type(page, 'Why all the same', 'Agreed with the client');
    await goTo(page, 'Who decides');
    await page.keyboard.type('Builder');
  }
  await inDialog(page, `Move on to ${state}`);
  await expect.poll(() => page.getByLabel('State', { exact: true }).inputValue(), { interval: 25 }).toBe(state);
}

async function enquire(page: Page): Promise<void> {
  await press(page, 'New job');
  await keyboardComesTo(page, 'Title');
  await page.keyboard.type('Reading room');
  await page.keyboard.press('Enter');
  await page.waitForSelector('main > header p:has-text("Reading room")');
  await press(page, 'Its size bench');
  await press(page, 'Take a size');
  await keyboardComesTo(page, 'Find a tank by its name or size');
  await page.keyboard.type('T05');
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-card] b:text-is("T05")');
}

async function quote(page: Page): Promise<void> {
  await overTheRail(page, 'Quote');
  await press(page, 'Issue');
  await inDialog(page, 'Issue');
  await reads(page, 'Quote Q-0001, revision A');
  await overTheRail(page, 'Jobs');
  await moveOn(page, 'accepted');
  await type(page, 'Deposit', '655');
  await press(page, 'Record the deposit');
  await inDialog(page, 'Record it');
  await reads(page, '655.00 cr in on 8 March 2027', 'article');
}

async function orderAndReceive(page: Page): Promise<void> {
  await overTheRail(page, 'Buying', 'Shopping run');
  await press(page, 'Place 5 orders');
  await inDialog(page, 'Place 5 orders');
  await page.locator('h1', { hasText: 'Orders' }).waitFor();
  for (const order of ['O-0001', 'O-0002', 'O-0003', 'O-0004', 'O-0005']) {
    await press(page, order);
    await reads(page, order, 'aside');
    await press(page, 'Receive');
    await inDialog(page, 'Receive');
  }
}

async function buildAndWatch(page: Page): Promise<void> {
  await overTheRail(page, 'Jobs');
  await moveOn(page, 'ready to build');
  await moveOn(page, 'built', true);
  await overTheRail(page, 'Plan');
  await press(page, 'Watch');
  await type(page, 'Signed by', 'Ottoline');
  // As much of the label as is read out.
  await goTo(
    page,
    'Readings: time, °C and humidity, a row a reading, as 14:30 24.5 85; then the room if read'.slice(0, 80),
  );
  await page.keyboard.insertText('0 22 90\n48 22 90');
  await press(page, 'Keep and sign');
  await reads(page, 'signed by Ottoline');
  await overTheRail(page, 'Jobs');
  await moveOn(page, 'watching', true);
  await moveOn(page, 'handed over', true);
}

describe('one job with no hand on the mouse', () => {
  test('goes over the rail from its enquiry to its handover, and the keyboard is always seen', async () => {
    const page = await pages.begin('jobs');
    for (const step of [enquire, quote, orderAndReceive, buildAndWatch]) await step(page);
    expect(unseen).toEqual([]);
    const written = readIn(pages.book(), (records) => [
      records.job.get('J02')?.state,
      [...records.order.values()].map((order) => orderStanding(records, order, pageDay).state),
    ]);
    expect(written).toEqual(['handed over', ['in', 'in', 'in', 'in', 'in']]);
  });
});

noneComplained(pages);
