import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { openPages } from '#tests/browser/pages.ts';
import { buildPreparePages } from '#tests/renderer/places/prepare/stand-in/build.ts';

const cards = [
  'survey',
  'prep',
  'treatment',
  'labels',
  'build',
  'watch',
  'animals-in',
  'handover',
  'care',
  'areas',
] as const;
const formats = ['A4', 'Letter'] as const;

/** Every card of a busy book as PDF and as images, A4 and Letter; returns the errors of the pages. */
export async function printCards(folder: string): Promise<readonly string[]> {
  const built = await buildPreparePages();
  const pages = await openPages(built);
  const page = await pages.open('prepare/J03/leaves');
  await writeBatches(page);
  for (const card of cards) await print(page, card, folder);
  await pages.close();
  rmSync(built, { recursive: true, force: true });
  return pages.complaints();
}

/** Nine batches, one with long words, so that the labels fill more than a row. */
async function writeBatches(page: Page): Promise<void> {
  for (let nth = 1; nth <= 9; nth += 1) {
    await page.evaluate(() => (location.hash = '#/prepare/J03/leaves'));
    await page.getByLabel('Leaves, loose').fill('43.51');
    await page
      .getByLabel('Collected at')
      .fill(nth === 2 ? 'The old oak wood above Brackenlume, north slope' : 'Fern Hill');
    await page
      .getByLabel('Note')
      .fill(nth === 3 ? 'Two kinds of oak, sorted by hand; a few holly leaves taken out' : '');
    await page.getByRole('button', { name: 'Write down a batch' }).click();
    await page.getByLabel(/^Core probe/).fill('0 20\n20 97\n35 97');
    await page.getByRole('button', { name: 'Take the log' }).click();
  }
}

async function print(page: Page, card: string, folder: string): Promise<void> {
  await page.evaluate((hash) => (location.hash = hash), `#/cards/J03/${card}`);
  await page.waitForFunction(
    (hash) => location.hash === hash && document.querySelector('article'),
    `#/cards/J03/${card}`,
  );
  for (const format of formats) {
    const file = `${folder}card-${card}-${format}`;
    await page.pdf({ path: `${file}.pdf`, format, preferCSSPageSize: false, printBackground: true });
    spawnSync('pdftoppm', ['-r', '80', '-png', `${file}.pdf`, file], { stdio: 'ignore' });
  }
}
