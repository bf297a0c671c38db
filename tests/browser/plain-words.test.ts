import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { places } from '#shared-calc/contract/places.ts';
import { goTo } from './bench-hands.ts';
import { useServedBook } from './use-served-book.ts';

const pages = useServedBook();
let page: Page;

beforeAll(async () => {
  page = await pages.begin('jobs');
});

/** A name of a line or function, a rule, a seal: nothing of these is read by somebody who only quotes. */
const code = /\b[a-z]+(?:_[a-z0-9]+)+\b|\b[0-9a-f]{64}\b|\b(?:or|and|if|not|min|max|clamp)\(/g;

/** The code words that can be seen on the page, each with what stands around it. */
async function codeOnPage(): Promise<readonly string[]> {
  const text = await page.evaluate(() => document.body.innerText);
  return [...text.matchAll(code)].map(
    ({ 0: word, index }) => `${word} in: ${text.slice(Math.max(0, index - 60), index + 60)}`,
  );
}

const job = 'J01';

describe('from the job to the papers', () => {
  test.each([
    ['jobs', [job]],
    ['bench', [job]],
    ['quotes', [job]],
    ['quotes', ['options', job]],
    ['needs', [job]],
    ['run', []],
    ['orders', []],
    ['store', []],
    ['prepare', [job, 'dates']],
    ['prepare', [job, 'checks']],
    ['prepare', [job, 'watch']],
    ['prepare', [job, 'took']],
    ['cards', [job, 'build']],
    ['cards', [job, 'handover']],
    ['cards', [job, 'survey']],
    ['today', []],
  ] as const)('no name of the code stands in %s %j', async (place, rest) => {
    await page.evaluate(`location.hash = '${writeRoute(place, ...rest)}'`);
    await page.locator('main h1', { hasText: places.find(({ id }) => id === place)?.title ?? '' }).waitFor();
    expect(await codeOnPage()).toEqual([]);
  });

  test('nor beside a chosen cell of the bench: a sum, a check, a measurement', async () => {
    await page.evaluate(`location.hash = '${writeRoute('bench', job)}'`);
    await page.waitForSelector('[role="gridcell"]');
    const seen: string[] = [];
    for (const line of ['Soil, placed', 'Soil at the front', 'Litter depth']) {
      await goTo(page, line, 'T07');
      seen.push(...(await codeOnPage()).map((each) => `${line}: ${each}`));
    }
    for (let flag = 0; flag < 6; flag += 1) {
      await page.keyboard.press('F8');
      await page.locator('#side-panel h2').waitFor();
      seen.push(...(await codeOnPage()).map((each) => `flag ${flag}: ${each}`));
    }
    expect(seen).toEqual([]);
  });

  test('nor beside an issued quote', async () => {
    await page.evaluate(`location.hash = '${writeRoute('quotes', job)}'`);
    await page.getByRole('button', { name: 'Issue', exact: true }).click();
    await page.getByRole('dialog').waitFor();
    const asked = await codeOnPage();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Issue/ })
      .click();
    await page.getByText('as it was issued').first().waitFor();
    expect([asked, await codeOnPage()]).toEqual([[], []]);
  });
});
