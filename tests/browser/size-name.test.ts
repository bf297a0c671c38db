import { describe, expect, test } from 'vitest';
import { quietLine } from './bench-hands.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();

describe('the name of a size', () => {
  test('is written in the menu of its card, refused with a sentence where it is none, and undone', async () => {
    const page = await pages.begin('bench');
    const heads = () => page.locator('[data-card] b').allTextContents();
    await page.getByRole('button', { name: 'Acts for T07' }).click();
    const field = page.getByLabel('What T07 is called');
    await field.press('Enter');
    const refused = await quietLine(page);
    await field.fill('Left of the door');
    await field.press('Enter');
    await page.waitForSelector('footer:has-text("T07 called Left of the door")');
    await expect.poll(heads).toEqual(['T03', 'Left of the door', 'T08']);
    const isShut = !(await field.isVisible());
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: 'Redo', exact: true }).waitFor();
    await expect.poll(heads).toEqual(['T03', 'T07', 'T08']);
    expect([refused, isShut]).toEqual([
      expect.stringContaining('T07: write what it is to be called, such as Left of the door.'),
      true,
    ]);
  });
});

noneComplained(pages);
