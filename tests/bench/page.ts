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
import { ms, ratio, timesOf, type Told } from './measure.ts';
import { stoodAt, timed, watchPage, watchStarts } from './painted.ts';

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
    await watchPage(page);
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
 * From Enter to the end of the frame that shows it; the baseline is a key that writes as many figures without
 * computing.
 */
async function editRows(page: Page): Promise<readonly Told[]> {
  await chooseBox(page);
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
  const floor = await timed(page, 'Shift', () => inTurn(page, EDITS, () => page.keyboard.press('Shift')));
  const edits = await timed(page, 'Enter', () => inTurn(page, EDITS, (turn) => writeBox(page, turn)));
  const [took, least] = [timesOf(edits.painted), timesOf(floor.painted)];
  const text = 'twelve figures drawn anew';
  const what = `page, one edit to painted, H1 x ${SIZES} sizes`;
  return [
    row(what, took.median, { text, floor: least.median }, '16 ms'),
    row('page, the same, 95th', took.p95, { text, floor: least.p95 }, '32 ms'),
    {
      what: `page, tasks over 50 ms in ${EDITS} edits`,
      took: String(edits.long),
      floor: `${text} ${floor.long}`,
      ratio: '',
      must: '0',
    },
  ];
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

/** A local value sent to the house: from the press to the frame that shows it in the visible columns. */
async function houseRow(page: Page): Promise<Told> {
  const sent = page.getByRole('button', { name: 'Send to house' });
  const act = async (turn: number) => {
    await writeBox(page, turn);
    await sent.click();
    await page.waitForTimeout(800);
    await chooseBox(page);
  };
  const { painted } = await timed(page, 'click', () => inTurn(page, HOUSE_EDITS, act));
  // Each round is two presses: one that sends, and one that selects the cell again.
  const presses = (rest: number) => timesOf(painted.filter((_, at) => at % 2 === rest)).median;
  return row(
    'page, house edit to columns in sight',
    presses(0),
    { text: 'choosing a box', floor: presses(1) },
    '16 ms',
  );
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
