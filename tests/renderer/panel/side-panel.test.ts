import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { goTo, write } from '#tests/browser/bench-hands.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';

/*
 * The side panel of the bench as it is read, whole, for one cell of each sort, and what the recipe's says of a removal. The expected
 * text is in `side-panel.txt`: a heading for each panel, then its lines.
 */

const pages = useServedBook();
let page: Page;

const wanted = new Map(
  readFileSync(path.join(import.meta.dirname, 'side-panel.txt'), 'utf8')
    .trimEnd()
    .split('\n\n')
    .map((part) => {
      const [heading = '', ...lines] = part.split('\n');
      return [heading, lines] as const;
    }),
);

beforeAll(async () => {
  page = await pages.begin('bench');
});

async function panelLines(): Promise<readonly string[]> {
  return linesOf(await page.locator('#side-panel').innerText());
}

function linesOf(text: string): readonly string[] {
  return text
    .split('\n')
    .map((line) => line.replaceAll(/\s+/g, ' ').trim())
    .filter((line) => line !== '');
}

describe('the side panel of the bench says', () => {
  test.each([
    ['Expanded clay, loose', 'T07'],
    ['Settling of the mix', 'T07'],
    ['Hottest day in the tank', 'T07'],
    ['Cool enough', 'T07'],
    ['Shelf holds', 'T08'],
    ['Kit', 'T03'],
    ['Inside length', 'T07'],
    ['Springtails to seed', 'T07'],
    ['Drainage fills in', 'T07'],
    ['Humidity before misting', 'T07'],
    ['Mist keeps up', 'T07'],
  ])('%s of %s, whole', async (line, size) => {
    await goTo(page, line, size);
    await expect.poll(panelLines).toEqual(wanted.get(`${line}, ${size}`));
  });

  test('what a local rule changes', async () => {
    await write(page, ['Litter depth', 'T07'], '20 mm + 5 mm');
    await goTo(page, 'Litter depth', 'T07');
    await expect.poll(panelLines).toEqual(wanted.get('Litter depth, T07, with a local rule'));
  });
});

describe('the side panel of the house recipe says', () => {
  beforeAll(async () => {
    await page.evaluate("location.hash = '#/recipe'");
    await page.getByRole('heading', { level: 1, name: 'House recipe' }).waitFor();
  });

  async function choose(line: string): Promise<void> {
    await page.keyboard.press('/');
    await page.keyboard.insertText(line);
    await page.keyboard.press('Enter');
  }

  test.each([
    'Expanded clay, loose',
    'Settling of the mix',
    'Settle-in',
    'Flow of one nozzle',
    // The bench has a rule written over it.
    'Litter depth',
  ])('what stops when %s goes', async (line) => {
    await choose(line);
    await page.locator('#side-panel').getByRole('button', { name: 'Remove', exact: true }).click();
    const alert = page.locator('#side-panel').getByRole('alert');
    await expect.poll(async () => linesOf(await alert.innerText())).toEqual(wanted.get(`${line}, removed`));
    await alert.getByRole('button', { name: 'Keep it' }).click();
  });
});

noneComplained(pages);
