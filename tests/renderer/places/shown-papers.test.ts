import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { openBook } from '#electron/book/open-book.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { newJob, type NewJob } from '#shared-calc/jobs/new-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Records, TreatmentBatch } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { pageDay } from '#tests/browser/served-book.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';
import { valueOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

/* Every paper of the page, read from the page. The expected text is in `shown-papers/NAME.txt`. */

const papers: Readonly<Record<string, string>> = {
  survey: 'cards/J02/survey',
  prep: 'cards/J02/prep',
  treatment: 'cards/J02/treatment',
  labels: 'cards/J02/labels',
  build: 'cards/J02/build',
  watch: 'cards/J02/watch',
  'animals-in': 'cards/J02/animals-in',
  handover: 'cards/J02/handover',
  care: 'cards/J02/care',
  areas: 'cards/J02/areas',
  quote: 'quotes/J02',
  options: 'quotes/options/J02',
  needs: 'jobs/J02/needs',
  'pick-list': 'jobs/J02/pick-list',
  order: 'run/order/S-hollin',
};

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('quotes/J02', fillBook);
});

describe('what is read on the paper', () => {
  test.each(Object.entries(papers))('%s', async (name, place) => {
    await page.evaluate(`location.hash = '#/${place}'`);
    const wanted = readFileSync(path.join(import.meta.dirname, `shown-papers/${name}.txt`), 'utf8');
    await expect.poll(() => wordsOf(page.getByRole('article'))).toBe(wanted);
  });

  test('of a quote, for the builder alone', async () => {
    await page.evaluate(`location.hash = '#/quotes/J02'`);
    const wanted = readFileSync(path.join(import.meta.dirname, 'shown-papers/quote-inside.txt'), 'utf8');
    const section = page.locator('section', { has: page.getByRole('heading', { name: /^For us alone/ }) }).last();
    await expect.poll(() => wordsOf(section)).toBe(wanted);
  });
});

describe('a quote as a file', () => {
  test('is light enough to be sent, and bears the name of its paper and job', async () => {
    await page.evaluate(`location.hash = '#/quotes/J02'`);
    await expect.poll(() => page.title()).toMatch(/^Quote, not issued yet, J02 /);
    const file = await page.pdf({ printBackground: true });
    expect(file.length).toBeLessThan(300_000);
  });
});

noneComplained(pages);

/** Its words part by part, without regard to style: a table row is one line, and so is a paragraph or an entry. */
async function wordsOf(part: Locator): Promise<string> {
  const found = await part.evaluate((root) => {
    const blocks = 'header, section, div, p, h2, h3, ul, ol, li, dl, dt, dd, table, tr, svg, text, figure, figcaption';
    const read = (node: Node): readonly string[] => {
      if (!(node instanceof Element)) return [node.textContent ?? ''];
      if (node.matches('tr')) return [[...node.children].map((cell) => read(cell).join(' ')).join(' | ')];
      return node.querySelector(blocks) === null ? [node.textContent] : [...node.childNodes].flatMap(read);
    };
    return read(root);
  });
  const words = found.map(onOneLine).filter((each) => each !== '');
  return `${words.join('\n')}\n`;
}

function onOneLine(text: string): string {
  return text.replaceAll(/\s+/g, ' ').trim();
}

/** Two tanks for a library, with a one-off line and a batch of leaves; reserves and a discount; a delivered tank. */
function fillBook(file: string): void {
  const book = valueOf(openBook(file, { today: pageDay, backups: false }));
  const before = book.records();
  const house = { contingencyShare: 0.05, warrantyShare: 0.02, plantLossShare: 0.1, discountShare: 0.03 };
  const reserved = withRecords(before, 'workshop', [{ ...workshopOf(before), ...house }]);
  const withJobs = handedOver(paidJob(paidJob(reserved, library, pageDay), school, '2026-11-09'));
  const withLine = withRecords(withJobs, 'quoteLine', [kit]);
  const after = withRecords(withLine, 'treatmentBatch', [batch]);
  valueOf(book.apply(diffRecords('two jobs, a line and a batch', before, after), book.revision()));
  book.close();
}

function paidJob(records: Records, asked: Partial<NewJob>, on: string): Records {
  const job: NewJob = { title: '', recipe: 'H1', sizes: [], writings: [], by: 'client', on, ...asked };
  const made = valueOf(newJob(records, job));
  const withJob = applyChange(records, made.change);
  return applyChange(withJob, valueOf(recordDeposit(withJob, { job: made.job, coins: 200_000, on })));
}

function handedOver(records: Records): Records {
  return applyChange(records, valueOf(moveJob(records, 'J03', 'handed over')));
}

const library: Partial<NewJob> = {
  title: 'Reading room',
  client: 'Brackenlume Library',
  contact: 'Ida Thorn',
  site: 'By the tall window',
  access: 'One step, a lift',
  audience: 'Children under five on weekday mornings, a clinic next door',
  animals: 'Small frogs, later a gecko',
  sizes: [
    { tank: 'T05', count: 1 },
    { tank: 'T07', count: 2 },
  ],
  writings: [{ line: 'soil_rise', text: '0 mm' }],
  handover: '2027-06-30',
};

const school: Partial<NewJob> = {
  title: 'Class 2',
  sizes: [{ tank: 'T03', count: 1 }],
  area: 'Old Town',
  handover: '2027-02-26',
};

const kit = { id: 'J02-kit', job: 'J02', label: 'Waterfall kit', group: 'mist', costCoins: 12_000, by: 'us' } as const;

const batch: TreatmentBatch = {
  id: 'L01',
  material: 'M15',
  litres: 8.81,
  way: 'steam',
  aim: 'sterile',
  on: '2027-03-06',
  collectedAt: 'Withy Wood, by leave of the estate',
  log: [],
  note: 'Second sieve',
};
