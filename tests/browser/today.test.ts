import { describe, expect, test } from 'vitest';
import { openBook } from '#electron/book/open-book.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { valueOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { plain } from './bench-hands.ts';
import { keyboardComesTo, pressSeen, tabTo } from './focus-ring.ts';
import { pageDay } from './served-book.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';

const pages = useServedBook();

/** A paid job, 8 days late by its plants, and a tub that may give what its build asks for. */
function addWork(file: string): void {
  const book = valueOf(openBook(file, { today: pageDay, backups: false }));
  const before = book.records();
  const made = valueOf(
    newJob(before, {
      title: 'Reading room',
      client: 'Brackenlume Library',
      recipe: 'H1',
      sizes: [{ tank: 'T05', count: 1 }],
      writings: [],
      handover: '2027-04-28',
      by: 'client',
      on: pageDay,
    }),
  );
  const withJob = applyChange(before, made.change);
  const paid = applyChange(withJob, valueOf(recordDeposit(withJob, { job: made.job, coins: 64_500, on: pageDay })));
  const after = withRecords(paid, 'tub', [
    { id: 'K1', kind: 'C1', startedOn: '2026-10-01', spare: false, place: '', note: '', founders: 1250, way: 'split' },
  ]);
  valueOf(book.apply(diffRecords('a paid job and a tub', before, after), book.revision()));
  book.close();
}

describe('today', () => {
  test('is what the page opens on: overdue first, then by weeks, each with why, for whom, by whom and when', async () => {
    const page = await pages.begin('', addWork);
    await page.locator('h1', { hasText: 'Today' }).waitFor();
    const list = page.getByRole('region', { name: 'What is to be done' });
    const rows = async (section: string) =>
      (
        await list
          .locator('section')
          .filter({ has: page.getByRole('heading', { name: section }) })
          .getByRole('listitem')
          .allInnerTexts()
      ).map(plain);
    await expect
      .poll(() => rows('Overdue'))
      .toEqual([
        'Feed K1 White springtail, started on Thursday 1 October, every 7 days Back room Grower 151 days late since Thu 8 October',
      ]);
    expect(await rows('This week')).toEqual([
      'Order plants decides Build on Thursday 15 April, handover on Thursday 6 May J02 Reading room Brackenlume Library Builder Wed 10 March',
    ]);
    const weeks = page.getByRole('complementary', { name: 'The next six weeks' });
    expect(plain(await weeks.getByRole('listitem').first().innerText())).toContain(
      'J02 Reading room 8 days late, handover 6 May 2027',
    );
  });

  test('a tick opens its act with day and person, Enter writes it, the row is gone and Undo brings it back', async () => {
    const page = await pages.begin('today', addWork);
    const harvest = 'Tick: Harvest 710 for J02, J02 Reading room';
    await page.getByRole('button', { name: harvest }).waitFor();
    const unseen = await tabTo(page, harvest);
    unseen.push(...(await pressSeen(page, ['Enter'])));
    await keyboardComesTo(page, 'Done on');
    const filled = await page.getByRole('textbox', { name: 'Done on' }).inputValue();
    const by = await page.getByLabel('By', { exact: true }).inputValue();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: harvest }).waitFor({ state: 'detached' });
    await keyboardComesTo(page, 'Tick: Build, J02 Reading room');
    expect([unseen, filled, by]).toEqual([[], pageDay, 'R-grower']);
    await page.keyboard.press('Control+z');
    await page.getByRole('button', { name: harvest }).waitFor();
  });

  test('a tub that was fed is fed again a week later', async () => {
    const page = await pages.begin('today', addWork);
    await page.getByRole('button', { name: 'Tick: Feed K1, Back room' }).click();
    await page.getByLabel('What was seen').fill('Lively');
    await page.keyboard.press('Enter');
    await expect
      .poll(async () => plain(await page.getByRole('listitem').filter({ hasText: 'Feed K1' }).innerText()))
      .toBe('Feed K1 White springtail, fed on Monday 8 March, every 7 days Back room Grower Mon 15 March');
  });

  test('Up and Down go from tick to tick, and a row leads to its place', async () => {
    const page = await pages.begin('today', addWork);
    await page.getByRole('button', { name: /^Go to: Order plants/ }).waitFor();
    await tabTo(page, 'Tick: Feed K1, Back room');
    const unseen = await pressSeen(page, ['ArrowDown']);
    await keyboardComesTo(page, 'Go to: Order plants, J02 Reading room');
    await page.keyboard.press('Enter');
    await keyboardComesTo(page, 'Shopping run');
    expect(unseen).toEqual([]);
  });
});

noneComplained(pages);
