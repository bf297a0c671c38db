import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { axeFaults } from '#tests/browser/axe-faults.ts';
import { belowField } from '#tests/browser/below-field.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';

const served = useServedBook();

const waits = (page: Page) => page.getByRole('complementary', { name: 'Checks of the place' });
const answerOf = async (page: Page, question: RegExp) => {
  const group = page.getByRole('group', { name: question });
  return group.getByRole('radio', { checked: true }).evaluate((radio) => radio.parentElement?.textContent);
};

describe('the survey of a job', () => {
  test('nothing is asked at first, and nothing is settled', async () => {
    const page = await served.begin('jobs/J01/survey');
    expect(await answerOf(page, /Children under five/)).toBe('not asked');
    await expect.poll(() => waits(page).textContent()).toContain('25 answers missing');
    expect(await waits(page).textContent()).not.toContain('holds');
  });

  test('the first answer says what stands against the move that comes with it; given up, nothing is written', async () => {
    const page = await served.begin('jobs/J01/survey');
    await page.getByRole('group', { name: /Lift/ }).getByText('yes', { exact: true }).click();
    const dialog = page.getByRole('dialog');
    await expect.poll(() => dialog.textContent()).toContain('is more than the shelf');
    await page.keyboard.press('Escape');
    await expect.poll(() => answerOf(page, /Lift/)).toBe('not asked');
    expect(await waits(page).textContent()).toContain('25 answers missing');
  });

  test('a reason and who decides for the first answer are kept with the job', async () => {
    const page = await served.begin('jobs/J01/survey');
    await page.getByRole('group', { name: /Lift/ }).getByText('yes', { exact: true }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Why all the same').fill('The shelf is built anew');
    await dialog.getByLabel('Who decides').selectOption({ index: 1 });
    await dialog.getByRole('button', { name: 'Write the answer' }).click();
    await expect.poll(() => answerOf(page, /Lift/)).toBe('yes');
    await page.evaluate("location.hash = '#/jobs/J01'");
    await expect.poll(() => page.locator('main').textContent()).toContain('The shelf is built anew');
  });

  test('answers are given with the keyboard alone, and settle what waited', async () => {
    const page = await served.begin('jobs/J01/survey');
    await page.getByRole('button', { name: 'Next not asked' }).click();
    await page.keyboard.press('ArrowLeft');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Enter');
    await expect.poll(() => answerOf(page, /Children under five/)).toBe('no');
    await page.getByLabel('Shelf rating').fill('60');
    await page.keyboard.press('Enter');
    await expect.poll(() => waits(page).textContent()).toContain('23 answers missing');
    const said = (await waits(page).textContent()) ?? '';
    expect(said).toContain('No child under five comes near it, as asked.');
    expect(said).toContain('together weigh');
  });

  test('a figure out of its bounds is refused at its field, and stays there to be mended', async () => {
    const page = await served.begin('jobs/J01/survey');
    const steps = page.getByLabel('Steps');
    await steps.fill('half');
    await page.keyboard.press('Enter');
    await expect.poll(() => belowField(steps)).toBe('Steps: "half" is not a figure.');
    const narrow = page.getByLabel('Narrowest on the way in');
    await narrow.fill('30 m');
    await page.keyboard.press('Enter');
    await expect.poll(() => belowField(narrow)).toContain('20000 mm at most');
    expect(await narrow.inputValue()).toBe('30 m');
  });

  test('every question has its label, and what is not asked reads so', async () => {
    const page = await served.begin('jobs/J01/survey');
    await page.getByRole('group', { name: /Lift/ }).waitFor();
    expect(await axeFaults(page)).toEqual([]);
  });
});

noneComplained(served);

describe('the calendar of a day', () => {
  test('is walked with the keyboard, says the days on which the workshop is shut, and writes the day', async () => {
    const page = await served.begin('jobs/J01');
    const field = page.getByRole('textbox', { name: 'Handover wanted' });
    await field.fill('12 May 2027');
    await field.press('Enter');
    await expect.poll(() => field.inputValue()).toBe('2027-05-12');
    await page.getByRole('button', { name: 'Calendar for Handover wanted' }).press('Enter');
    const day = (name: string) => page.getByRole('grid').getByRole('button', { name, exact: true });
    const isAt = (name: string) =>
      expect.poll(() => day(name).evaluate((one) => one === document.activeElement), { message: name }).toBe(true);
    await isAt('Wednesday 12 May 2027');
    expect(await axeFaults(page)).toEqual([]);
    for (const [key, name] of [
      ['PageDown', 'Saturday 12 June 2027, closed'],
      ['ArrowDown', 'Saturday 19 June 2027, closed'],
      ['ArrowRight', 'Sunday 20 June 2027, closed'],
      ['ArrowRight', 'Monday 21 June 2027'],
    ] as const) {
      await page.keyboard.press(key);
      await isAt(name);
    }
    await page.keyboard.press('Enter');
    await expect.poll(() => field.inputValue()).toBe('2027-06-21');
  });
});
