import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Page } from 'playwright-core';
import { goTo } from '#tests/browser/bench-hands.ts';
import { pageDay } from '#tests/browser/served-book.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';
import { lwJson } from '#tests/electron/cli/run-cli.ts';

/* The same order, asked on the command line and on the page: whatever one cautions of, the other does. */

const pages = useServedBook();
let page: Page;

const Answer = z.object({ cautions: z.array(z.object({ says: z.string() })) });

/** What the command line says to mind, in the words of the page. */
async function told(...argv: readonly string[]): Promise<readonly string[]> {
  const { cautions } = Answer.parse(await lwJson(...argv, '--on', pageDay, '--book', pages.book()));
  return cautions.map(({ says }) => plain(says));
}

function plain(words: string): string {
  return words.replaceAll(/\s+/g, ' ').replaceAll('degC', '°C').trim();
}

async function shown(place: string): Promise<string> {
  await page.evaluate(`location.hash = '#/${place}'`);
  await page.waitForTimeout(500);
  return plain(await page.getByRole('main').innerText());
}

beforeAll(async () => {
  page = await pages.begin('jobs');
});

describe('command line and page', () => {
  test.each([
    ['the needs list', 'jobs/J01/needs', ['needs', '--job', 'J01']],
    ['the dates', 'prepare/J01/dates', ['prepare', '--job', 'J01']],
    ['the culture board', 'cultures/C1', ['cultures', '--jobs', 'J01', '--kind', 'C1']],
    ['the survey card', 'prepare/J01/cards/survey', ['paper', 'survey', '--job', 'J01']],
    ['the build card', 'prepare/J01/cards/build', ['paper', 'build', '--job', 'J01']],
    ['the handover card', 'prepare/J01/cards/handover', ['paper', 'handover', '--job', 'J01']],
    ['the care calendar', 'prepare/J01/cards/care', ['paper', 'care', '--job', 'J01']],
    ['the treatment card', 'prepare/J01/cards/treatment', ['paper', 'treatment', '--job', 'J01']],
  ])('%s: every caution stands in both', async (_, place, argv) => {
    const wanted = await told(...argv);
    const found = await shown(place);
    expect(wanted.length).toBeGreaterThan(0);
    expect(
      wanted.filter((says) => !found.includes(says) && !(place.endsWith('handover') && inSigns.test(says))),
    ).toEqual([]);
  });

  test.each(['People to lift, filled', 'Room for water', 'Load on the shelf', 'Hottest day in the tank'])(
    'the panel of %s says what the bench of the command line says of that line',
    async (label) => {
      const Lines = z.object({ columns: z.array(z.object({ lines: z.record(z.string(), z.unknown()) })) });
      const names: Readonly<Record<string, string>> = {
        'People to lift, filled': 'crew_filled',
        'Room for water': 'drain_room',
        'Load on the shelf': 'shelf_load',
        'Hottest day in the tank': 'hottest_day',
      };
      const line = names[label] ?? '';
      const argv = ['bench', '--sizes', 'T07', '--lines', line] as const;
      expect(Object.keys(Lines.parse(await lwJson(...argv, '--book', pages.book())).columns[0]?.lines ?? {})).toEqual([
        line,
      ]);
      const wanted = await told(...argv);
      await page.evaluate("location.hash = '#/bench'");
      await goTo(page, label, 'T07');
      const panel = plain(await page.locator('#side-panel').innerText());
      expect(wanted.length).toBeGreaterThan(0);
      expect(wanted.filter((says) => !panel.includes(says.replace(/^T07 weighs|^This tank weighs/, 'weighs')))).toEqual(
        [],
      );
    },
  );
});

/** Said in full by a sign of the handover card, in its own words. */
const inSigns = /^Standing water below the mesh|^Stop, photograph|^Above .* act: lights off/;

noneComplained(pages);
