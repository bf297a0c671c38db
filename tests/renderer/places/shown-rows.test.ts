import { bagMoves } from '#tests/shared-calc/buy/lots.ts';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { openBook } from '#electron/book/open-book.ts';
import { places } from '#shared-calc/contract/places.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Order, Records } from '#shared-calc/records/records.ts';
import { pageDay } from '#tests/browser/served-book.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';
import { valueOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

/*
 * Every view of the page over one book, read as a user reads it: rows cell by cell, entries of lists, fields with their
 * content. The expected text is in `shown/PLACE.txt`, one row a line. If the first line is a number, the view has that
 * many rows, and contains the other lines in this order.
 */

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('jobs', addRecords);
  // High enough that a grid draws all its rows.
  await page.setViewportSize({ width: 2600, height: 7000 });
});

describe('what is read', () => {
  test.each(places)('in the $title', async ({ id }) => {
    await page.evaluate(`location.hash = '#/${id}'`);
    const wanted = readFileSync(path.join(import.meta.dirname, `shown/${id}.txt`), 'utf8')
      .trimEnd()
      .split('\n');
    await expect.poll(async () => sought(await shown(), wanted)).toEqual(wanted);
  });
});

noneComplained(pages);

/**
 * A second, paid job; on the first job a kit from another maker; goods past their best-before day and good ones; tubs;
 * an order that is late, of which a part came.
 */
function addRecords(file: string): void {
  const book = valueOf(openBook(file, { today: pageDay, backups: false }));
  const before = book.records();
  const after = (['quoteLine', 'move', 'tub'] as const).reduce(
    (records, kind) => withRecords(records, kind, [...added[kind]]),
    withRecords(paidJob(before), 'order', [lateOrder]),
  );
  valueOf(book.apply(diffRecords('a paid job, a kit, goods, tubs and orders', before, after), book.revision()));
  book.close();
}

function paidJob(records: Records): Records {
  const made = valueOf(
    newJob(records, {
      title: 'Reading room',
      recipe: 'H1',
      sizes: [{ tank: 'T05', count: 1 }],
      writings: [],
      by: 'client',
      on: pageDay,
    }),
  );
  const withJob = applyChange(records, made.change);
  return applyChange(withJob, valueOf(recordDeposit(withJob, { job: made.job, coins: 50_000, on: pageDay })));
}

const added = {
  quoteLine: [{ id: 'J01-kit', job: 'J01', label: 'Waterfall kit', group: 'mist', costCoins: 12_000, by: 'us' }],
  move: [
    ...bagMoves({ id: 'K-old', of: 'M26', amount: 40, bestBefore: '2027-02-28' }),
    ...bagMoves({ id: 'K-good', of: 'M10', amount: 20, bestBefore: '2027-12-31' }),
    ...bagMoves({ id: 'K-came', of: 'M02', amount: 20, coins: 2000, order: 'O-0001', line: 1 }),
  ],
  tub: [
    {
      id: 'B01',
      kind: 'C1',
      startedOn: '2027-01-11',
      spare: false,
      place: 'Shelf 2',
      note: '',
      founders: 1250,
      way: 'split',
    },
    {
      id: 'B02',
      kind: 'C3',
      startedOn: '2027-03-01',
      spare: true,
      place: 'Shelf 3',
      note: '',
      founders: 100,
      way: 'split',
    },
  ],
} as const;

const lateOrder: Order = {
  id: 'O-0001',
  supplier: 'S-hollin',
  on: '2027-01-01',
  lines: [
    {
      n: 1,
      of: 'M02',
      label: 'Expanded clay, fine',
      amount: 10,
      unit: 'L',
      count: 3,
      askedCoins: 950,
      due: '2027-01-05',
      for: [],
    },
  ],
  carriageCoins: 500,
  note: '',
};

/** Rows cell by cell, entries of lists, and fields with their content. */
async function shown(): Promise<readonly string[]> {
  const main = page.getByRole('main');
  const rows = await main
    .getByRole('row')
    .evaluateAll((found) =>
      found.map((row) =>
        [...row.querySelectorAll<HTMLElement>('th, td, [role$=cell], [role$=header]')].map((cell) => cell.innerText),
      ),
    );
  const entries = await main.getByRole('listitem').allInnerTexts();
  const fields = (await main.ariaSnapshot())
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => /^- (textbox|combobox|checkbox|radio|option .*\[selected\])/.test(line));
  return [...rows.map((cells) => cells.map(onOneLine).join(' | ').trim()), ...entries.map(onOneLine), ...fields];
}

function onOneLine(text: string): string {
  return text.replaceAll(/\s+/g, ' ').trim();
}

/** All rows; for a long view its count, and the requested rows. */
function sought(read: readonly string[], [first = '', ...rows]: readonly string[]): readonly string[] {
  return /^\d+$/.test(first) ? [String(read.length), ...read.filter((row) => rows.includes(row))] : read;
}
