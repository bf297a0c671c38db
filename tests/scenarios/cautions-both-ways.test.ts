import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Page } from 'playwright-core';
import { goTo } from '#tests/browser/bench-hands.ts';
import { pageDay } from '#tests/browser/served-book.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';
import { cautionEntry, cautionIds } from '#shared-calc/cautions/all-cautions.ts';
import { lwJson } from '#tests/electron/cli/run-cli.ts';

/*
 * The same order, asked on the command line and on the page: each says the same set of cautions. Whatever the page says
 * in the words of the table, with whatever figures, is looked for in the answer of the command line, and the other way.
 */

const pages = useServedBook();
let page: Page;

const Answer = z.object({
  cautions: z.array(z.object({ id: z.string().nullable(), says: z.string() })),
  checks: z.array(z.object({ state: z.string(), says: z.string() })).default([]),
});
type Told = z.infer<typeof Answer>['cautions'];

/** What the command line says to mind, in the words of the page; an open check may be worded as a caution is. */
async function told(...argv: readonly string[]): Promise<Told> {
  const { cautions, checks } = Answer.parse(await lwJson(...argv, '--on', pageDay, '--book', pages.book()));
  const minded = cautions.map(({ id, says }) => ({ id, says: plain(says) }));
  const open = checks.filter(({ state }) => state !== 'holds').map(({ says }) => plain(says));
  return [...minded, ...open.flatMap(idsIn).map((id) => ({ id, says: '' }))];
}

/** The cautions of the table that stand in a text: in a tank's words with any figures, or in those of any tank. */
function idsIn(text: string): readonly string[] {
  return cautionIds.filter((id) => {
    const { says, anyTank = says } = cautionEntry(id);
    const ofTank = plain(says)
      .split(/\{\w+\}/)
      .map((part) => part.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`))
      .join('.{1,80}?');
    return text.includes(plain(anyTank)) || new RegExp(ofTank).test(text);
  });
}

/** What only one of both says. */
function differing(wanted: Told, text: string, quiet: (says: string) => boolean = () => false) {
  const ids = new Set(wanted.map(({ id }) => id));
  return {
    notOnPage: wanted.map(({ says }) => says).filter((says) => !text.includes(says) && !quiet(says)),
    onPageAlone: idsIn(text).filter((id) => !ids.has(id)),
  };
}

const none = { notOnPage: [], onPageAlone: [] };

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
    ['the watch card', 'prepare/J01/cards/watch', ['paper', 'watch', '--job', 'J01']],
    ['the animals-in plan', 'prepare/J01/cards/animals-in', ['paper', 'animals-in', '--job', 'J01']],
    ['the prep plan', 'prepare/J01/cards/prep', ['paper', 'prep', '--job', 'J01']],
    ['the quote', 'quotes/J01', ['quote', '--job', 'J01']],
    ['the quote on paper', 'quotes/J01', ['paper', 'quote', '--job', 'J01']],
    ['the sizes to choose from', 'quotes/options/J01', ['paper', 'options', '--job', 'J01']],
    ['the pick list', 'jobs/J01/pick-list', ['paper', 'pick', '--job', 'J01']],
  ])('%s: each caution stands in both', async (_, place, argv) => {
    const wanted = await told(...argv);
    const found = await shown(place);
    expect(wanted.length).toBeGreaterThan(0);
    const isSign = (says: string) => place.endsWith('handover') && inSigns.test(says);
    expect(differing(wanted, found, isSign)).toEqual(none);
  });

  test('the shopping run over a job, and the order to its supplier', async () => {
    await page.evaluate("location.hash = '#/run'");
    await page.getByRole('checkbox', { name: /J01/ }).check();
    const run = plain(await page.getByRole('main').innerText());
    expect(differing(await told('run', '--jobs', 'J01'), run)).toEqual(none);
    const all = await told('paper', 'order', '--job', 'J01');
    const hollin = await shown('run/order/S-hollin');
    const ids = idsIn(hollin);
    expect(ids.length).toBeGreaterThan(0);
    expect(ids.filter((id) => !all.some((each) => each.id === id))).toEqual([]);
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
      expect(differing(wanted, panel)).toEqual(none);
    },
  );
});

/** Said in full by a sign of the handover card, in its own words. */
const inSigns = /^Standing water below the mesh|^Stop, photograph|^Above .* act: lights off/;

noneComplained(pages);
