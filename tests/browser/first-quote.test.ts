import { rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { beginBook } from '#electron/book/seed-demo.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { openPricesOf } from '#shared-calc/derive/open-prices.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { keyboardComesTo, keyboardOn, tabTo } from './focus-ring.ts';
import { pageDay } from './served-book.ts';
import { noneComplained, useServedBook } from './use-served-book.ts';
import { readIn } from './write-in.ts';

/*
 * From a new book to the first issued quote, with no hand on the mouse. An entry is one field written, one choice made
 * or one column pasted; keys that only go on are none.
 */

const MOST = 60;

const pages = useServedBook();

interface Country {
  readonly currency: string;
  readonly coinDecimals: number;
  /** Letters that choose units, dates and paper. */
  readonly choices: readonly [units: string, dates: string, paper: string];
  readonly wage: string;
  readonly overhead: string;
  /** Length, depth, height, dam, glass. */
  readonly tank: readonly string[];
  /** What one pack of the nth material costs: as it is typed, and as a figure. */
  readonly price: (nth: number) => readonly [text: string, price: number];
}

const usa: Country = {
  currency: 'USD',
  coinDecimals: 2,
  choices: ['u', 'm', 'L'],
  wage: '38',
  overhead: '12.50',
  tank: ['24', '18', '1 ft 6 in', '5 1/2', '1/4'],
  price: (nth) => [`$${nth + 4}.50`, nth + 4.5],
};

const japan: Country = {
  currency: 'JPY',
  coinDecimals: 0,
  choices: ['m', 'y', 'A'],
  wage: '3,200',
  overhead: '900',
  tank: ['600', '450', '450', '140', '6'],
  price: (nth) => [`${(nth + 1) * 350}`, (nth + 1) * 350],
};

/** Hands on the keyboard, and what they enter. */
interface Hands {
  readonly page: Page;
  readonly entries: string[];
}

/** Enter writes the field, and goes on to the next. */
async function type({ page, entries }: Hands, field: string, text: string, key = 'Enter'): Promise<void> {
  await keyboardComesTo(page, field);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
  await page.keyboard.press(key);
  entries.push(`${field}: ${text}`);
}

/** A choice is made by the first letters of its word. */
async function choose({ page, entries }: Hands, field: string, letters: string): Promise<void> {
  await keyboardComesTo(page, field);
  await page.keyboard.type(letters);
  await page.keyboard.press('Tab');
  entries.push(`${field}: ${letters}`);
}

async function tick({ page, entries }: Hands, box: string): Promise<void> {
  await tabTo(page, box);
  await page.keyboard.press('Space');
  entries.push(`${box}: yes`);
}

async function press({ page }: Hands, name: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Enter');
}

async function paste({ page, entries }: Hands, column: string, texts: readonly string[]): Promise<void> {
  const onColumn = async () => (await keyboardOn(page)).on.startsWith(`${column}, `);
  for (const key of ['ArrowLeft', 'ArrowRight']) {
    for (let turn = 0; turn < 6 && !(await onColumn()); turn += 1) await page.keyboard.press(key);
  }
  await page.evaluate((text) => navigator.clipboard.writeText(text), texts.join('\n'));
  await page.keyboard.press('Control+v');
  await expect.poll(() => page.locator('footer').innerText()).toContain(`Undo ${texts.length} fields`);
  entries.push(`${column}: a column of ${texts.length}`);
}

async function beginWith(start: 'house' | 'empty'): Promise<Hands> {
  const page = await pages.begin('today', (path) => {
    rmSync(path);
    const made = beginBook(path, { start }, { today: pageDay, backups: false });
    if (!made.ok) throw new Error(JSON.stringify(made.fault));
    made.value.close();
  });
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('region', { name: 'To a first quote' }).waitFor();
  return { page, entries: [] };
}

async function writeHouse(hands: Hands, { choices, currency, wage, overhead, tank }: Country): Promise<void> {
  const [units, dates, paper] = choices;
  await tabTo(hands.page, 'Units');
  await choose(hands, 'Units', units);
  await choose(hands, 'Dates', dates);
  await choose(hands, 'Paper', paper);
  await press(hands, 'Next');
  await type(hands, 'Currency', currency);
  await press(hands, 'Next');
  await type(hands, 'standard', '8');
  await press(hands, 'Next');
  await type(hands, 'Builder', wage);
  await type(hands, 'Overhead, on every hour', overhead);
  await press(hands, 'Next');
  await type(hands, 'One for all not given yet', '35');
  await press(hands, 'Next');
  await type(hands, 'Name of the workshop', 'Fern & Glass');
  await type(hands, 'Terms', 'Half now, the rest at the handover.', 'Tab');
  await type(hands, 'A quote is valid for', '30');
  await type(hands, 'Deposit', '50');
  await type(hands, 'For what comes up', '0');
  await type(hands, 'For warranty', '2');
  await type(hands, 'For plants that fail', '0');
  await press(hands, 'Next');
  await type(hands, 'Name', 'Hall tank');
  await keyboardComesTo(hands.page, 'Shape');
  await hands.page.keyboard.press('Tab');
  const fields = ['Length', 'Depth', 'Height', 'Dam', 'Glass'];
  for (const [nth, text] of tank.entries()) await type(hands, fields[nth] ?? '', text);
  await press(hands, 'Add the tank');
}

async function answerRecipe(hands: Hands): Promise<void> {
  const { page } = hands;
  await keyboardComesTo(page, 'New recipe: answer which layers, depths and fittings');
  await page.keyboard.press('Enter');
  await type(hands, 'Title', 'Fern floor', 'Tab');
  for (const part of ['Drainage', 'Mesh', 'Soil', 'Leaf litter', 'Plants', 'Light']) await tick(hands, part);
  for (const [field, text] of [
    ['Drainage, depth', '1 1/2 in'],
    ['Leaf litter, depth', '1 in'],
  ] as const) {
    await tabTo(page, field);
    await type(hands, field, text, 'Tab');
  }
  for (const goods of ['Coir', 'Fine bark']) await tick(hands, goods);
  for (const [field, text] of [
    ['Coir, parts', '4'],
    ['Fine bark, parts', '2'],
  ] as const) {
    await tabTo(page, field);
    await type(hands, field, text, 'Tab');
  }
  await press(hands, 'Make it');
  await page.getByRole('group', { name: 'First job' }).waitFor();
  await tabTo(page, 'Title');
}

async function beginJob(hands: Hands, recipe: string | undefined): Promise<void> {
  await type(hands, 'Title', 'Hallway');
  if (recipe !== undefined) {
    await tabTo(hands.page, 'House recipe');
    await choose(hands, 'House recipe', recipe);
  }
  await press(hands, 'Begin the job');
  for (const [name, days, carriage] of [
    ['Glass and Lamps', '3', '12'],
    ['Media and Leaves', '2', '0'],
  ] as const) {
    await type(hands, 'Supplier', name);
    await type(hands, 'Lead, working days', days);
    await type(hands, 'Carriage', carriage);
    await press(hands, 'Add the supplier');
  }
  await keyboardComesTo(hands.page, 'Supplier');
  await press(hands, 'Next');
}

/** The price of a pack of each material, as a figure. */
async function givePrices(hands: Hands, { price }: Country, packs?: (unit: string) => string) {
  const { page } = hands;
  await expect.poll(async () => (await keyboardOn(page)).on).toMatch(/^Write the \d+ prices in their grid/);
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await keyboardOn(page)).on).toBe('Price, T01, empty');
  // More rows than are drawn: their order is read from the book.
  const rows = readIn(pages.book(), (records) => openPricesOf(derive(records, pageDay), ['J01']));
  const codes = rows.map(({ material }) => material);
  if (packs) {
    await paste(
      hands,
      'Pack',
      rows.map(({ unit }) => packs(unit)),
    );
  }
  const suppliers = codes.map((_, nth) => (nth % 2 === 0 ? 'Glass and Lamps' : 'Media and Leaves'));
  await paste(hands, 'Supplier', suppliers);
  await paste(
    hands,
    'Price',
    codes.map((_, nth) => price(nth)[0]),
  );
  return new Map(codes.map((code, nth) => [code, price(nth)[1]]));
}

async function issue(hands: Hands): Promise<QuoteBody> {
  const { page, entries } = hands;
  await page.keyboard.press('/');
  await press(hands, 'See the quote');
  await page.getByRole('heading', { level: 1, name: 'Quote' }).waitFor();
  expect(await page.locator('main').innerText()).not.toContain('missing');
  await press(hands, 'Issue');
  await type(hands, 'Why all the same', 'The place is surveyed after the order', 'Tab');
  await choose(hands, 'Who decides', 'Builder');
  await press(hands, 'Issue');
  await page.getByText('Quote Q-0001, revision A').first().waitFor();
  expect(entries.length).toBeLessThanOrEqual(MOST);
  const [quote] = readIn(pages.book(), ({ issuedQuote }) => [...issuedQuote.values()]);
  const body = quote && bodyOf(quote);
  if (!body) throw new Error('no quote was issued');
  return body;
}

/** By hand, from what was entered: cost, then the margin of 35 %, 2 % for warranty, and the tax of 8 %. */
function expectTotal(body: QuoteBody, prices: ReadonlyMap<string, number>, country: Country) {
  const sellers = body.goods.flatMap(({ material, supplier }) => (prices.has(material) ? [supplier] : []));
  expect(new Set(sellers).size).toBe(2);
  const goods = body.needs.map(({ material, used }) => {
    const amount = body.goods.find((each) => each.material === material)?.packs[0]?.amount ?? 1;
    return (used * (prices.get(material) ?? Number.NaN)) / amount;
  });
  const hour = [country.wage, country.overhead].map((text) => Number(text.replace(',', '')));
  const cost = [...goods, ...hour.map((each) => each * body.sums.hours)].reduce((sum, each) => sum + each, 0);
  const coins = (cost / 0.65 / 0.98) * 1.08 * 10 ** country.coinDecimals;
  // Each cost and each line of the quote is rounded to whole coins once.
  expect(Math.abs(body.sums.grossCoins - coins)).toBeLessThan(2 * goods.length);
  expect(body.sums.depositCoins).toBe(Math.round(body.sums.grossCoins / 2));
}

/** A pack of the usual size, in units that are sold there. */
function packOf(unit: string): string {
  return { L: '5 gal', g: '1 lb', m2: '10 ft2', m: '30 ft' }[unit] ?? '1';
}

describe('from a new book to the first issued quote, by keyboard', () => {
  test.each([
    { where: 'in dollars and inches', country: usa, recipe: 'H1' },
    { where: 'in yen and millimetres', country: japan, recipe: 'H3' },
  ])('with the house recipes, $where', async ({ country, recipe }) => {
    const hands = await beginWith('house');
    await writeHouse(hands, country);
    await keyboardComesTo(hands.page, 'Title');
    await beginJob(hands, recipe);
    const prices = await givePrices(hands, country);
    const body = await issue(hands);
    expect(prices.size).toBeGreaterThanOrEqual(10);
    expect([body.workshop.currency, body.workshop.coinDecimals]).toEqual([country.currency, country.coinDecimals]);
    expectTotal(body, prices, country);
  });

  test('with a recipe of one’s own from questions, in dollars and inches', async () => {
    const hands = await beginWith('empty');
    await writeHouse(hands, usa);
    await answerRecipe(hands);
    await beginJob(hands, undefined);
    const prices = await givePrices(hands, usa, packOf);
    const body = await issue(hands);
    expect(prices.size).toBeGreaterThanOrEqual(10);
    expectTotal(body, prices, usa);
  });
});

noneComplained(pages);
