import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { actTable, type ActInputs, type ActName } from '#shared-calc/acts/all-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { goTo, plain, write } from './bench-hands.ts';
import { pageDay, type Prepare } from './served-book.ts';
import { useServedBook } from './use-served-book.ts';
import { readIn, writeIn, type Act } from './write-in.ts';

const pages = useServedBook();

function doing<N extends ActName>(name: N, input: ActInputs[N]): Act {
  return (records) => actTable[name].run(derive(records, pageDay), input);
}

/** J02, one T05, accepted without a quote: it is frozen as S-0001A. J01 is an enquiry of the same house. */
const withSold: Prepare = (file) =>
  writeIn(file, [
    doing('newJob', {
      title: 'Reading room',
      recipe: 'H1',
      sizes: [{ tank: 'T05', count: 1 }],
      writings: [{ line: 'soil_rise', text: '0 mm' }],
      by: 'client',
    }),
    doing('moveJob', { job: 'J02', state: 'accepted' }),
  ]);

async function says(page: Page, part: string): Promise<string> {
  return plain(await page.locator(part).first().innerText());
}

/** Enter on a button that has the keyboard; Tab goes through every size of a bench and line of a recipe before it. */
async function pressByKey(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).focus();
  await page.keyboard.press('Enter');
}

describe('a change of the house', () => {
  test('is asked about, kept as a proposal, put in force, offered and taken, all by keyboard', async () => {
    const page = await pages.begin('bench/J01', withSold);
    await write(page, ['Litter depth', 'T07'], '20');
    await goTo(page, 'Litter depth', 'T07');
    await pressByKey(page, 'Send to house');
    const dialog = page.getByRole('dialog', { name: 'Change the house H1' });
    await dialog.waitFor();
    await page.keyboard.type('thinner lasts');
    const asked = plain(await dialog.innerText());
    expect(asked).toContain('30 mm -> 20 mm');
    expect(asked).toMatch(/J01 Ferry waiting hall\s+enquiry\s+follows it/);
    expect(asked).toMatch(/J02 Reading room\s+accepted\s+will be offered it\s+.*cost -1\.86, price -3\.47/);
    await pressByKey(page, 'Keep as a proposal');
    await dialog.waitFor({ state: 'detached' });

    await page.evaluate(() => (location.hash = '#/recipe/H1'));
    const log = page.getByRole('complementary', { name: 'The recipe' });
    await log.getByText('thinner lasts').waitFor();
    await pressByKey(page, 'Put HC-0001 in force');
    await expect.poll(() => log.innerText()).toContain('in force');

    await page.evaluate(() => (location.hash = '#/jobs/J02'));
    const offer = page.getByRole('group', { name: /^HC-0001/ });
    await expect.poll(async () => plain(await offer.innerText())).toContain('cost -1.86, price -3.47');
    expect(plain(await offer.innerText())).toContain(
      'The house has changed since this was sold: litter depth 30 mm -> 20 mm.',
    );
    await pressByKey(page, 'Take the change');
    await expect.poll(() => says(page, 'article')).toContain('not in S-0001A: 1 house change, -3.47');
    await expect
      .poll(() => readIn(pages.book(), ({ houseChange }) => houseChange.get('HC-0001')?.answers[0]?.answer))
      .toBe('take');
  });

  test('in the recipe it is asked about before it is written, and Enter puts it in force', async () => {
    const page = await pages.begin('recipe/H1', withSold);
    await page.locator('[data-line="litter"] button').first().click();
    const high = page.getByLabel('At most', { exact: true });
    await high.fill('90');
    await high.press('Enter');
    const dialog = page.getByRole('dialog', { name: 'Change the house H1' });
    await dialog.waitFor();
    await page.keyboard.type('the beech lies thicker');
    await page.keyboard.press('Enter');
    await dialog.waitFor({ state: 'detached' });
    await expect
      .poll(() =>
        readIn(pages.book(), ({ line, houseChange }) => [
          line.get('H1.litter')?.high,
          houseChange.get('HC-0001')?.note,
        ]),
      )
      .toEqual([90, 'the beech lies thicker']);

    await pressByKey(page, 'Find and replace');
    const replacing = page.getByRole('dialog', { name: 'Find and replace' });
    await replacing.getByLabel('Find', { exact: true }).fill('30 mm');
    await replacing
      .getByLabel(/^Replace/)
      .first()
      .fill('35 mm');
    await replacing.getByRole('button', { name: /^Replace \d+/ }).click();
    await dialog.waitFor();
    expect(plain(await dialog.innerText())).toContain('30 mm -> 35 mm');
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    expect(readIn(pages.book(), ({ line }) => line.get('H1.litter')?.text)).toBe('30 mm');
  });
});
