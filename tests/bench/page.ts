import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { makeDemoBook } from '#electron/book/seed-demo.ts';
import { today } from '#electron/service/today.ts';
import { emptyChange } from '#shared-calc/records/change.ts';
import { openServedBook } from '#tests/browser/served-book.ts';
import { ms, ratio, timesOf, type Told } from './measure.ts';

const SIZES = 200;
const EDITS = 40;
const built = fileURLToPath(new URL('../../renderer/dist/assets', import.meta.url));

/** The page over H1 x 200 sizes in real Chromium, each figure beside its floor in the same run. */
export async function benchPage(): Promise<readonly Told[]> {
  const pages = await openServedBook();
  try {
    const cold = await timeOfOpening(() => pages.begin('bench', fillBook));
    const page = await pages.open('bench');
    const warm = await timeOfOpening(async () => {
      await page.reload();
      await page.waitForSelector('.strips .ag-cell.box');
    });
    const floor = await eventTimes(page, floorKeys);
    const edit = await eventTimes(page, editKeys);
    return [
      row(
        `page, one edit to painted, H1 x ${SIZES} sizes`,
        ms(edit.median),
        `a key that does nothing ${ms(floor.median)}`,
        '16 ms',
      ),
      row('page, the same, 95th', ms(edit.p95), `95th ${ms(floor.p95)}`, '32 ms'),
      row('page, tasks over 50 ms in 40 edits', String(edit.long), String(floor.long), '0'),
      {
        ...row('page, warm start to boxes drawn', ms(warm), `first start ${ms(cold)}`, '1 s'),
        ratio: ratio(warm / cold),
      },
      row('page code, compressed', `${Math.round(pageBytes() / 1000)} kB`, '', '700 kB'),
    ];
  } finally {
    await pages.close();
  }
}

function row(what: string, took: string, floor: string, must: string): Told {
  return { what, took, floor, ratio: '', must };
}

/** The demo job with so many sizes, over all tanks in turn. */
function fillBook(file: string): void {
  const made = makeDemoBook(file, { today: today(), backups: false });
  if (!made.ok) throw new Error(`no book: ${made.fault.kind}`);
  const { tank } = made.value.records();
  const codes = [...tank.keys()];
  const added = Array.from({ length: SIZES - 3 }, (_, at) => {
    const code = codes[at % codes.length] ?? 'T07';
    const record = { id: `B${at}`, job: 'J01', tank: code, order: 10 + at, label: code, count: 1 };
    return { kind: 'size' as const, record };
  });
  const done = made.value.apply({ ...emptyChange('many sizes'), added }, made.value.revision());
  if (!done.ok) throw new Error(`not written: ${done.fault.kind}`);
  made.value.close();
}

async function timeOfOpening(open: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await open();
  return performance.now() - start;
}

type Keys = (page: Page, turn: number) => Promise<void>;

/** Arrow up and down between two boxes is no edit; what it takes is the floor of a key in this page. */
async function floorKeys(page: Page): Promise<void> {
  await page.keyboard.press('Shift');
}

async function editKeys(page: Page, turn: number): Promise<void> {
  await page.keyboard.type(String(20 + (turn % 20)));
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowUp');
}

/** From the key to the next frame painted, as the browser itself tells it, and how many tasks ran over 50 ms. */
async function eventTimes(page: Page, keys: Keys) {
  const box = page.locator('.strips .ag-cell.box', {
    has: page.locator('.unseen', { hasText: /^Litter depth, T03,/ }),
  });
  await box.first().click();
  await page.evaluate(() => {
    const told = { keys: [] as number[], long: 0 };
    Object.assign(window, { told });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) if (entry.name === 'keydown') told.keys.push(entry.duration);
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
    new PerformanceObserver((list) => {
      told.long += list.getEntries().length;
    }).observe({ type: 'longtask' });
  });
  for (let turn = 0; turn < EDITS; turn += 1) {
    await keys(page, turn);
    await page.waitForTimeout(120);
  }
  const told = await page.evaluate(() => (window as unknown as { told: { keys: number[]; long: number } }).told);
  return { ...timesOf(told.keys.length > 0 ? told.keys : [16]), long: told.long };
}

function pageBytes(): number {
  return readdirSync(built)
    .filter((file) => /\.(js|css)$/.test(file))
    .reduce((sum, file) => sum + gzipSync(readFileSync(path.join(built, file))).length, 0);
}
