import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { openBook } from '#electron/book/open-book.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { pageDay } from '#tests/browser/served-book.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';
import { emptyStore } from '#tests/shared-calc/buy/lots.ts';
import { valueOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

/* Clay from two suppliers, for a paid T08: what each would land for, another taken by hand, and a rise tried first. */

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('run/M01', fill);
});

describe('clay that two suppliers sell', () => {
  test('the run takes what lands for the least, and shows what else could be taken', async () => {
    const offers = page.getByRole('table', { name: /^Offers/ });
    await offers.waitFor();
    expect(await rowsOf(offers)).toEqual([
      ["Hollin Lane Growers' Supply", '1 × 45 L', '31.50', expect.any(String), 'second best Take it'],
      ['Quarry Yard', '2 × 20 L', '20.00', expect.any(String), 'taken'],
    ]);
  });

  test('another is taken by hand, and given up again', async () => {
    await page.getByRole('button', { name: "Take Expanded clay 8-16 mm from Hollin Lane Growers' Supply" }).click();
    await expect
      .poll(async () => (await rowsOf(page.getByRole('table', { name: /^Offers/ }))).map((row) => row[4]))
      .toEqual(['taken', 'second best Take it']);
    await page.getByRole('button', { name: 'Back to the best' }).click();
    await expect
      .poll(async () => (await rowsOf(page.getByRole('table', { name: /^Offers/ }))).map((row) => row[4]))
      .toEqual(['second best Take it', 'taken']);
  });

  test('the material book has the packs of each, with article numbers', async () => {
    await page.evaluate(`location.hash = '#/material-book/M01'`);
    const panel = page.getByRole('complementary');
    await panel.getByRole('heading', { name: 'Quarry Yard' }).waitFor();
    expect(await panel.locator('h3').allTextContents()).toEqual([
      "Hollin Lane Growers' Supply, the usual supplier",
      'Pack of 10 L',
      'Pack of 45 L',
      'Quarry Yard',
      'Pack of 20 L',
      'Another pack',
    ]);
    const article = panel.getByLabel('Article number of 20 L of M01 from Quarry Yard');
    expect(await article.inputValue()).toBe('QY-20');
  });

  test('a rise says what it would do before it is written, and is one step to undo', async () => {
    await page.evaluate(`location.hash = '#/rate-book/suppliers/S-quarry'`);
    const panel = page.getByRole('complementary');
    await panel.getByRole('heading', { name: 'Raise its prices' }).waitFor();
    await panel.getByLabel('By', { exact: true }).fill('12.5');
    const prices = panel.getByRole('table', { name: /^Prices that rise/ });
    await prices.waitFor();
    expect(await rowsOf(prices)).toEqual([['M01 Expanded clay 8-16 mm, 20 L', '10.00', '11.25']]);
    await panel.getByRole('button', { name: 'Raise 1 price' }).click();
    await expect.poll(() => panel.getByLabel('By', { exact: true }).inputValue()).toBe('');
    await panel.getByLabel('By', { exact: true }).fill('10');
    await expect.poll(() => rowsOf(prices)).toEqual([['M01 Expanded clay 8-16 mm, 20 L', '11.25', '12.38']]);
  });
});

noneComplained(pages);

async function rowsOf(table: ReturnType<Page['getByRole']>): Promise<readonly (readonly string[])[]> {
  const rows = await table.locator('tbody tr').all();
  return Promise.all(
    rows.map(async (row) => {
      const cells = await row.locator('th, td').allTextContents();
      return cells.map((cell) => cell.replaceAll('\u00a0', ' ').trim());
    }),
  );
}

function fill(path: string): void {
  const book = valueOf(openBook(path, { today: pageDay, backups: false }));
  const before = book.records();
  const jobs = [...before.job.values()].map((job) => ({ ...job, state: 'closed' as const }));
  const paid = paidJob(withRecords(emptyStore(before), 'job', jobs));
  valueOf(book.apply(diffRecords('a job and a supplier', before, withQuarry(paid)), book.revision()));
  book.close();
}

function withQuarry(records: Records): Records {
  const terms = { sells: 'clay', leadDays: 3, carriageCoins: 400, note: '' };
  const sold = withRecords(records, 'supplier', [{ id: 'S-quarry', name: 'Quarry Yard', ...terms }]);
  const pack = { id: 'M01-20', material: 'M01', amount: 20, supplier: 'S-quarry', article: 'QY-20' };
  const priced = withRecords(sold, 'pack', [pack]);
  return withRecords(priced, 'packPrice', [{ id: 'M01-20@1', pack: 'M01-20', from: '2027-03-01', priceCoins: 1000 }]);
}

function paidJob(records: Records): Records {
  const made = valueOf(
    newJob(records, {
      title: 'Hall',
      recipe: 'H1',
      sizes: [{ tank: 'T08', count: 1 }],
      writings: [{ line: 'soil_rise', text: '0 mm' }],
      by: 'client',
      on: pageDay,
    }),
  );
  const withJob = applyChange(records, made.change);
  return applyChange(withJob, valueOf(recordDeposit(withJob, { job: made.job, coins: 100, on: pageDay })));
}
