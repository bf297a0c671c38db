import { describe, expect, test } from 'vitest';
import { goTo, seenBox, write } from './bench-hands.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';
import { readIn } from './write-in.ts';

const pages = useServedBook();

const askers = () =>
  readIn(pages.book(), ({ localValue }) => [...localValue.values()].map(({ line, by }) => `${line} ${by}`));

describe('who asked for a local value', () => {
  test('is told in the working panel from the keyboard, saved, and undone in one step', async () => {
    const page = await pages.begin('bench');
    await write(page, ['Air gap under the mesh', 'T08'], '15 mm');
    await goTo(page, 'Air gap under the mesh', 'T08');
    const checkbox = page.getByLabel('The client asked for this');
    const before = await checkbox.isChecked();
    await checkbox.focus();
    await page.keyboard.press('Space');
    await page.waitForSelector('footer:has-text("asked for by the client")');
    await expect.poll(askers).toEqual(['drain_gap client']);
    expect([before, await checkbox.isChecked()]).toEqual([false, true]);
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: 'Redo', exact: true }).waitFor();
    await expect.poll(() => checkbox.isChecked()).toBe(false);
  });
});

describe('a local value cleared in the working panel', () => {
  test('goes back to the house, however fast one goes on', async () => {
    const page = await pages.begin('bench');
    await write(page, ['Litter depth', 'T07'], '20');
    await goTo(page, 'Litter depth', 'T07');
    const field = page.getByRole('complementary').locator('textarea[aria-autocomplete]');
    await field.fill('');
    await field.evaluate((each) => {
      // Faster than a user: the panel has not been updated yet when it loses the focus.
      each.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
      (each as HTMLElement).blur();
    });
    await expect.poll(askers).toEqual([]);
    expect((await seenBox(page, 'Litter depth', 'T07'))?.spoken).toBe('Litter depth, T07, 30 mm, house figure');
  });
});

describe('a refusal in the quiet line', () => {
  test.each(['to another box', 'to another place', 'on writing'])('leaves when the person goes %s', async (going) => {
    const page = await pages.begin('bench');
    await goTo(page, 'Litter depth', 'T03');
    await page.keyboard.press('/');
    await page.keyboard.insertText('no such thing');
    await page.keyboard.press('Enter');
    const refused = page.locator('footer [data-refused]');
    await refused.waitFor();
    if (going === 'to another box') await page.locator('[data-chosen]').focus();
    const stood = await refused.textContent();
    const go = {
      'to another box': () => page.keyboard.press('ArrowDown'),
      'to another place': () => page.locator('nav a:not([aria-current])').last().click(),
      'on writing': () => page.keyboard.press('x'),
    }[going];
    await expect
      .poll(async () => [await go?.(), await refused.count()], { timeout: 5_000, interval: 200 })
      .toEqual([undefined, 0]);
    expect(stood).toBe('Nothing here is called no such thing.');
  });
});

noneComplained(pages);
