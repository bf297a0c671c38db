import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { openBook } from '#electron/book/open-book.ts';
import { newJob, type NewJob } from '#shared-calc/jobs/new-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { emptyStore, withBags, type Bag } from '#tests/shared-calc/buy/lots.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { pageDay } from '#tests/browser/served-book.ts';
import { useServedBook } from '#tests/browser/use-served-book.ts';
import { valueOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

/*
 * The two shopping scenarios as read from the page: three paid jobs of T03, T07 and T08, flat, in one run
 * with nothing free in the Store; then one T07 alone, for which 6 L of coir and 2 L of charcoal are reserved.
 */

const mix = ['M05', 'M06', 'M07', 'M08', 'M09'];
const paid = ['J02', 'J03', 'J04', 'J05'] as const;
const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('run', refill);
  await page
    .getByRole('table', { name: /^(From |Nothing to order)/ })
    .first()
    .waitFor();
});

describe('three sizes, one shopping run, on the page', () => {
  test('packs, together, alone and left in the store, material by material', async () => {
    const rows = await ledger(['J02', 'J03', 'J04']);
    expect(Object.fromEntries(Object.entries(rows).filter(([material]) => material in together))).toEqual(together);
  });
});

/** Needed, on hand, buy, together, alone, left. */
const together: Readonly<Record<string, readonly string[]>> = {
  M01: ['57.13 L', '', '1 × 45 L, 2 × 10 L', '51.10', '60.90', '7.87 L'],
  M04: ['15.71 L', '', '3 × 6 L', '21.60', '28.80', '2.29 L'],
  M05: ['45.69 L', '', '1 × 70 L', '24.50', '32.20', '24.31 L'],
  M06: ['45.69 L', '', '1 × 50 L', '34.00', '53.40', '4.31 L'],
  M07: ['30.46 L', '', '1 × 40 L', '54.00', '81.00', '9.54 L'],
  M08: ['15.23 L', '', '1 × 20 L', '22.00', '29.60', '4.77 L'],
  M09: ['15.23 L', '', '2 × 12 L', '18.40', '27.60', '8.77 L'],
  M15: ['530.84 g', '', '1 × 500 g, 1 × 100 g', '24.20', '31.20', '69.16 g'],
};

describe('the mix with stock on hand, on the page', () => {
  test('what is bought and what it costs: 66.00 for the five, and what is left', async () => {
    const rows = await ledger(['J05']);
    expect(Object.fromEntries(mix.map((material) => [material, rows[material]]))).toEqual({
      M05: ['13.71 L', '6.00 L', '1 × 9 L', '4.60', '4.60', '1.29 L'],
      M06: ['13.71 L', '', '2 × 10 L', '17.80', '17.80', '6.29 L'],
      M07: ['9.14 L', '', '2 × 8 L', '27.00', '27.00', '6.86 L'],
      M08: ['4.57 L', '2.00 L', '1 × 5 L', '7.40', '7.40', '2.43 L'],
      M09: ['4.57 L', '', '1 × 12 L', '9.20', '9.20', '7.43 L'],
    });
  });
});

/** The rows of the run over these jobs, from every supplier, by material, with plain spaces. */
async function ledger(bought: readonly string[]): Promise<Readonly<Record<string, readonly string[]>>> {
  for (const job of paid) await page.getByRole('checkbox', { name: job }).setChecked(bought.includes(job));
  await page.waitForFunction(`document.querySelectorAll('fieldset input:checked').length === ${bought.length}`);
  const rows = await rowsOf();
  return Object.fromEntries(rows.map(([material = '', ...cells]) => [material, cells]));
}

async function rowsOf(): Promise<readonly (readonly string[])[]> {
  const rows = await page
    .getByRole('table', { name: /^(From |Nothing to order)/ })
    .locator('tbody tr')
    .all();
  return Promise.all(
    rows.map(async (row) => {
      const code = await row.getByRole('rowheader').locator('span').first().textContent();
      const cells = await row.locator('td').allTextContents();
      return [code ?? '', ...cells.map((cell) => cell.replaceAll('\u00a0', ' ').trim())];
    }),
  );
}

/** The book with only J02, J03, J04 and J05 to buy for, and stock reserved for J05. */
function refill(path: string): void {
  const book = valueOf(openBook(path, { today: pageDay, backups: false }));
  const before = book.records();
  const filled = ['T03', 'T07', 'T08', 'T07'].reduce(paidJob, emptyStore(closed(before)));
  const stocked = withBags(filled, [keptFor('M05', 6), keptFor('M08', 2)]);
  valueOf(book.apply(diffRecords('jobs of the scenario', before, stocked), book.revision()));
  book.close();
}

function closed(records: Records): Records {
  const jobs = [...records.job.values()].map((job) => ({ ...job, state: 'closed' as const }));
  return withRecords(records, 'job', jobs);
}

function paidJob(records: Records, tank: string): Records {
  const wish: NewJob = {
    title: `Job of ${tank}`,
    recipe: 'H1',
    sizes: [{ tank, count: 1 }],
    writings: [{ line: 'soil_rise', text: '0 mm' }],
    by: 'client',
    on: pageDay,
  };
  const made = valueOf(newJob(records, wish));
  const withJob = applyChange(records, made.change);
  return applyChange(withJob, valueOf(recordDeposit(withJob, { job: made.job, coins: 100, on: pageDay })));
}

function keptFor(of: string, amount: number): Bag {
  return { of, amount, sealed: false, job: 'J05' };
}
