import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { openServedBook } from '#tests/browser/served-book.ts';
import { writeIn } from '#tests/browser/write-in.ts';
import { openBrowser } from '#tests/browser/find-browser.ts';
import { openBareGrid } from './bare-grid.ts';
import { costOfKey, type KeyCost } from './page-work.ts';
import { ms, ratio, timesOf, type Told } from './measure.ts';
import { stoodAt, timed, watchStarts } from './painted.ts';

const SIZES = 200;
const EDITS = 40;
const HOUSE_EDITS = 12;
const SCROLLS = 60;
const drawnBox = '[role="gridcell"]';
const built = fileURLToPath(new URL('../../renderer/dist/assets', import.meta.url));

/** The page over H1 x 200 sizes in real Chromium; each figure has a baseline from the same run. */
export async function benchPage(): Promise<readonly Told[]> {
  const pages = await openServedBook();
  try {
    await pages.begin('bench', (book) => writeIn(book, [manySizes]));
    const page = await pages.open('bench');
    const start = await startRows(page);
    await page.waitForTimeout(3000);
    const edits = await editRows(page);
    const house = await houseRow(page);
    return [...edits, house, await scrollRow(page), ...start, codeRow()];
  } finally {
    await pages.close();
  }
}

/** The demo job with this many sizes, cycling through all tanks. */
function manySizes({ tank }: Records): Result<Change, never> {
  const codes = [...tank.keys()];
  const added = Array.from({ length: SIZES - 3 }, (_, at) => {
    const code = codes[at % codes.length] ?? 'T07';
    const record = { id: `B${at}`, job: 'J01', tank: code, order: 10 + at, label: code, count: 1 };
    return { kind: 'size' as const, record };
  });
  return ok({ ...emptyChange('many sizes'), added });
}

/** The median of three warm starts; the baseline is the same host's smallest file. */
async function startRows(page: Page): Promise<readonly Told[]> {
  await watchStarts(page, `${drawnBox}, pre`);
  const bench = page.url();
  const starts: number[] = [];
  for (let turn = 0; turn < 3; turn += 1) {
    await page.reload();
    starts.push(await stoodAt(page));
    await page.waitForTimeout(1500);
  }
  await page.goto(new URL('/.vite/license.md', bench).href);
  const floor = await stoodAt(page);
  await page.goto(bench);
  await page.waitForSelector(drawnBox);
  const { median } = timesOf(starts);
  return [row('page, warm start to boxes painted', median, { text: 'a page of text', floor }, '1 s')];
}

/**
 * Enter, and the first digit, which opens the field over the cell. The baselines are the grid's library alone, which
 * writes as many cells, and our page when it only writes as many texts.
 */
async function editRows(page: Page): Promise<readonly Told[]> {
  const bare = await bareCost();
  await chooseBox(page);
  await writeTextsOnShift(page);
  const texts = await costOfKey(page, { key: 'Shift', times: EDITS });
  const enter = await costOfKey(page, {
    key: 'Enter',
    times: EDITS,
    before: (turn) => page.keyboard.type(String(20 + (turn % 20))),
    after: () => page.keyboard.press('ArrowUp'),
  });
  const digit = await costOfKey(page, { key: '7', times: EDITS, after: () => page.keyboard.press('Escape') });
  return [
    ...costRows(`page, one edit, H1 x ${SIZES} sizes`, enter, bare),
    ...costRows('page, the first digit', digit, bare),
    ...costRows('page, twelve figures drawn anew', texts, bare),
    {
      what: `page, tasks over 50 ms in ${EDITS} edits`,
      took: String(enter.long),
      floor: `bare grid ${bare.long}`,
      ratio: '',
      must: '0',
    },
  ];
}

async function bareCost(): Promise<KeyCost> {
  const browser = await openBrowser();
  try {
    const page = await openBareGrid(browser, { rows: 246, columns: SIZES });
    return await costOfKey(page, { key: 'x', times: EDITS });
  } finally {
    await browser.close();
  }
}

function costRows(what: string, { work, painted }: KeyCost, bare: KeyCost): readonly Told[] {
  const must = 'x 2 of the bare grid';
  const text = 'bare grid, 12 cells';
  return [
    row(`${what}, processor`, work.median, { text, floor: bare.work.median }, must),
    row(`${what}, processor, 95th`, work.p95, { text, floor: bare.work.p95 }, must),
    row(`${what}, to painted`, painted.median, { text, floor: bare.painted.median }, must),
    row(`${what}, to painted, 95th`, painted.p95, { text, floor: bare.painted.p95 }, must),
  ];
}

async function writeTextsOnShift(page: Page): Promise<void> {
  await page.evaluate(() => {
    const drawn = [...document.querySelectorAll('[role="gridcell"] [data-part="figure"]')];
    const figures = drawn.filter((_, at) => at % 7 === 0).slice(0, 12);
    let turn = 0;
    window.addEventListener('keydown', ({ key }) => {
      if (key !== 'Shift') return;
      turn += 1;
      for (const { firstChild } of figures) if (firstChild) firstChild.nodeValue = String(100 + turn);
    });
  });
}

async function chooseBox(page: Page): Promise<void> {
  const box = page.locator(drawnBox, { has: page.locator('[data-part="spoken"]', { hasText: /^Litter depth, T03,/ }) });
  await box.first().click();
}

async function writeBox(page: Page, turn: number): Promise<void> {
  await page.keyboard.type(String(20 + (turn % 20)));
  await page.keyboard.press('Enter');
  await page.waitForTimeout(60);
  await page.keyboard.press('ArrowUp');
}

/** A local value sent to the house: from the press of *Put in force* to the frame that shows it in the visible columns. */
async function houseRow(page: Page): Promise<Told> {
  const sent = page.getByRole('button', { name: 'Send to house' });
  const inForce = page.getByRole('button', { name: 'Put in force' });
  const act = async (turn: number) => {
    await writeBox(page, turn);
    await sent.click();
    await inForce.click();
    await page.waitForTimeout(800);
    await chooseBox(page);
  };
  const { painted } = await timed(page, 'click', () => inTurn(page, HOUSE_EDITS, act));
  // Each round is three presses: one that asks, one that sends, and one that selects the cell again.
  const presses = (rest: number) => timesOf(painted.filter((_, at) => at % 3 === rest)).median;
  return row('page, house edit to columns in sight', presses(1), { text: 'choosing a box', floor: presses(2) }, 'told');
}

/** Frames while the bench is scrolled both ways, compared with frames of the idle page. */
async function scrollRow(page: Page): Promise<Told> {
  const rest = await timed(page, '', () => page.waitForTimeout(1000));
  await page.mouse.move(700, 500);
  const scroll = (turn: number) => page.mouse.wheel(turn % 2 === 0 ? 300 : 0, turn % 4 === 1 ? 120 : -60);
  const run = await timed(page, '', () => inTurn(page, SCROLLS, scroll, 16));
  const [took, least] = [timesOf(run.frames), timesOf(rest.frames)];
  const scrolled = row(
    'page, a frame while it is scrolled',
    took.median,
    { text: 'at rest', floor: least.median },
    'told',
  );
  return { ...scrolled, took: `${scrolled.took}, 95th ${ms(took.p95)}` };
}

async function inTurn(page: Page, times: number, act: (turn: number) => Promise<void>, pauseMs = 120): Promise<void> {
  for (let turn = 0; turn < times; turn += 1) {
    await act(turn);
    await page.waitForTimeout(pauseMs);
  }
}

interface Floor {
  readonly text: string;
  readonly floor: number;
}

function row(what: string, took: number, { text, floor }: Floor, must: string): Told {
  return { what, took: ms(took), floor: `${text} ${ms(floor)}`, ratio: ratio(took / floor), must };
}

function codeRow(): Told {
  const bytes = readdirSync(built)
    .filter((file) => /\.(js|css)$/.test(file))
    .reduce((sum, file) => sum + gzipSync(readFileSync(path.join(built, file))).length, 0);
  return {
    what: 'page code, compressed',
    took: `${Math.round(bytes / 1000)} kB`,
    floor: '',
    ratio: '',
    must: '700 kB',
  };
}
