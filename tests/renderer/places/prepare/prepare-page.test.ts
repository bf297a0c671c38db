import { readFileSync, rmSync } from 'node:fs';
import ICAL from 'ical.js';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeFaults } from '#tests/browser/axe-faults.ts';
import { pickIn } from '#tests/browser/pick-in.ts';
import { openPages, type Pages } from '#tests/browser/pages.ts';
import { buildPreparePages } from './stand-in/build.ts';

let pages: Pages;
let folder: string;

beforeAll(async () => {
  folder = await buildPreparePages();
  pages = await openPages(folder);
});

afterAll(async () => {
  await pages.close();
  rmSync(folder, { recursive: true, force: true });
});

async function textOf(page: Page, place: string): Promise<string> {
  return plain(await page.locator(place).innerText());
}

/** One row of words, with plain spaces. */
function plain(text: string): string {
  return text.replaceAll(/\s+/g, ' ').trim();
}

describe('the prep plan as a place', () => {
  // Scenario 11, forward from the deposit of 8 March.
  test('the open job: what is late and why, what decides, and every act with its day', async () => {
    const page = await pages.open('prepare/J02/dates');
    const says = await page.getByRole('region', { name: 'What is pressing' }).locator('p').allInnerTexts();
    expect(says.slice(0, 2).map(plain)).toEqual([
      '8 days late because of plant quarantine: the handover moves from Wednesday 28 April to Thursday 6 May.',
      'Order plants by Wednesday 10 March or Reading room opens later still.',
    ]);
    const rows = await page.getByRole('table', { name: 'What to do by when' }).locator('tbody tr').allInnerTexts();
    expect(rows.map(plain)).toContain('Thursday 15 April 2027 Build');
    await page.close();
  });

  test('its dates go out as a calendar that another program reads', async () => {
    const page = await pages.open('prepare/J02/dates');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as calendar' }).click(),
    ]);
    const events = new ICAL.Component(ICAL.parse(readFileSync(await file.path(), 'utf8')) as never).getAllSubcomponents(
      'vevent',
    );
    const dates = Object.fromEntries(
      events.map((event) => [
        String(event.getFirstPropertyValue('summary')),
        String(event.getFirstPropertyValue('dtstart')),
      ]),
    );
    expect(file.suggestedFilename()).toBe('J02 Reading room prep plan.ics');
    expect([dates['Order plants: Reading room'], dates['Hand over: Reading room']]).toEqual([
      '2027-03-10',
      '2027-05-06',
    ]);
    await page.close();
  });

  test('a step is ticked where it stands, with day and person filled in; the plan shows its day, and Undo takes it back', async () => {
    const page = await pages.open('prepare/J02/dates');
    const glue = page.getByRole('button', { name: 'Tick: Glue the background' });
    await glue.press('Enter');
    const form = page.getByRole('group', { name: 'Glue the background' });
    await form.getByLabel('Minutes').fill('90');
    await form.getByLabel('Minutes').press('Enter');
    await glue.waitFor({ state: 'detached' });
    const row = page.getByRole('row').filter({ hasText: 'Glue the background' }).first();
    expect(plain(await row.innerText())).toMatch(/8 March 2027\s+Glue the background\s+done/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await glue.waitFor();
    await page.close();
  });

  test('fewer places for tanks than stand there at once is a clash, told and drawn', async () => {
    const page = await pages.open('prepare/jobs');
    const places = page.getByLabel('Places for tanks in the workshop');
    await places.fill('1');
    await places.press('Enter');
    expect(await textOf(page, 'role=list[name="Clashes"]')).toMatch(
      /room From \d+ April 2027 to .*: \d tanks stand here at once, 1 place/,
    );
    expect(await page.locator('figure [data-part="clash"]').count()).toBeGreaterThan(0);
    await page.close();
  });

  // Scenarios 7 and 9.
  test('the sheet of checks: by how much, and what would mend it for what price; taken, it is undone again', async () => {
    const page = await pages.open('prepare/J03/checks/T07');
    const shelf = page.getByRole('listitem').filter({ hasText: 'Shelf holds' });
    expect(plain(await shelf.innerText())).toContain('93.19 kg against 80.00 kg: 13.19 kg short.');
    const cool = page.getByRole('listitem').filter({ hasText: 'Cool enough' });
    expect(plain(await cool.innerText())).toContain(
      'Take the screen from under the lamps: hottest day in the tank 27.2 °C, at worst 29.7; helps, but not enough; saves 49.00 cr of cost, 70.00 of price.',
    );
    await cool.getByRole('button', { name: 'Take it for T07' }).last().click();
    expect((await cool.innerText()).trim()).toMatch(/^holds/);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect((await cool.innerText()).trim()).toMatch(/^stop/);
    await page.close();
  });

  // Scenario 5.
  test('leaves: the ways side by side, sterile by steam alone', async () => {
    const page = await pages.open('prepare/leaves');
    await page.getByLabel('Leaves, loose').fill('43.51');
    const rows = async () =>
      (await page.getByRole('region', { name: 'Ways side by side' }).locator('tbody tr').allInnerTexts()).map(plain);
    expect(await rows()).toEqual([
      'Pressure steam 4 119.76 7 30 87 348 min 56 min',
      'Boil 4 97.81 20 15 50 200 min 56 min suggested',
      'Bake 2 105.00 23 30 68 136 min 28 min',
    ]);
    await page.getByLabel('Aim').selectOption('sterile');
    expect((await rows())[2]).toBe('Bake Baking cleans and does not sterilise; only pressure steam does.');
    await page.close();
  });

  test('a batch is written down, its log pasted, and what it reached is said and drawn', async () => {
    const page = await pages.open('prepare/leaves');
    await page.getByLabel('Leaves, loose').fill('43.51');
    await page.getByLabel('Aim').selectOption('sterile');
    await page.getByLabel('Collected at').fill('Fern Hill wood');
    await page.getByLabel('Collected at').press('Enter');
    const log = page.getByLabel(/^Core probe/);
    await log.fill('0 20\n40 121\n70 121\n80 60');
    await page.getByRole('button', { name: 'Take the log' }).click();
    const said = await textOf(page, 'article [role="status"]');
    expect(said).toMatch(/^Core up to 121\.0 °C; 3\d\.\d of 30 min .* The core was there long enough\.$/);
    expect(await page.getByRole('article').locator('canvas').count()).toBe(2);
    expect(await page.getByRole('link', { name: 'Its label on paper' }).getAttribute('href')).toBe(
      '#/cards/labels/TB-001',
    );
    await page.close();
  });

  test('readings are held against the band, kept and signed', async () => {
    const page = await pages.open('prepare/J02/watch');
    await page.getByLabel(/^Readings: time/).fill('0 22 90\n24 25.5 95\n48 22 90');
    expect(await textOf(page, 'main [role="status"]')).toContain(
      'Watched 48.0 h: 22.0 to 25.5 °C, within 18 to 27 for 100 % of the time',
    );
    await page.getByLabel('Signed by').fill('Ottoline');
    await page.getByRole('button', { name: 'Keep and sign' }).click();
    expect(await textOf(page, '#work')).toContain('Kept on 8 March 2027, signed by Ottoline.');
    await page.close();
  });

  test('a watch that has the room beside it teaches this tank by a click', async () => {
    const page = await pages.open('prepare/J02/watch');
    await page.getByLabel(/^Readings: time/).fill('0 21 60\n12 25 80 21 45');
    await page.getByLabel('Signed by').fill('Ottoline');
    await page.getByRole('button', { name: 'Keep and sign' }).click();
    await page.evaluate(`location.hash = '#/prepare/J02/took'`);
    const warm = page.getByRole('row', { name: /Warming factor/ });
    expect(plain(await warm.innerText())).toMatch(/Warming factor\s+\d\.\d+ \(\d\.\d+ to \d\.\d+\)/);
    await warm.getByRole('button', { name: 'This tank only' }).click();
    expect(await textOf(page, 'footer')).toContain('taught: warm_factor to');
    await page.close();
  });

  test('the plan is said with how far a guess may move it; minutes have no range', async () => {
    const page = await pages.open('prepare/J06/took');
    const work = await textOf(page, '#work');
    expect(work).toMatch(/planned \d+ d \(\d+ to \d+\)/);
    expect(work).toContain('planned 11.4 min');
    expect(work).not.toMatch(/planned 11\.4 min \(/);
    await page.close();
  });

  test('the house is taught by a click and by nothing else', async () => {
    const page = await pages.open('prepare/J06/took');
    const lesson = page.getByRole('region', { name: 'Lessons' }).locator('tbody tr').first();
    expect(plain(await lesson.innerText())).toContain('1.2 * (3 min + 0.9 min/L * drainage_placed)');
    await page.getByRole('button', { name: 'Teach the house' }).click();
    expect(await textOf(page, 'footer')).toContain(
      'house taught: drainage_work to 1.2 * (3 min + 0.9 min/L * drainage_placed)',
    );
    await page.close();
  });

  test('T turns a picture into its figures and back; in a field it is a letter', async () => {
    const page = await pages.open('cultures/C1');
    await page.keyboard.press('t');
    expect(
      await page
        .getByRole('region', { name: /^Figures/ })
        .locator('tbody tr')
        .nth(1)
        .innerText(),
    ).toBe('28\t6,010\t3,005\t3,005');
    expect(await page.locator('figure [role="group"]').isVisible()).toBe(false);
    await page.keyboard.press('t');
    expect(await page.locator('figure [role="group"]').isVisible()).toBe(true);
    await page.getByRole('textbox', { name: 'Place' }).first().press('t');
    expect(await page.locator('figure [role="group"]').isVisible()).toBe(true);
    await page.close();
  });
});

describe('the culture board as a place', () => {
  test('what the builds ask for, the tubs to keep, and a claim by a job', async () => {
    const page = await pages.open('cultures/C1');
    expect(await textOf(page, '#work')).toContain('Start 1 tub beside those that stand; no spare is wanted.');
    const free = page.getByRole('list', { name: 'Tubs' }).getByRole('listitem').filter({ hasText: 'T-02' });
    await pickIn(free.getByLabel('Kept for'), 'J04');
    expect(await textOf(page, 'footer')).toContain('tub T-02 kept for J04');
    await page.getByRole('button', { name: 'Start a tub' }).click();
    expect(await page.getByRole('list', { name: 'Tubs' }).locator('> li').count()).toBe(3);
    await page.close();
  });

  test('1,400 small flies a week: 4 tubs a week, 20 on the shelf', async () => {
    const page = await pages.open('cultures/C5');
    await page.getByLabel('Flies wanted a week').fill('1400');
    await page.getByLabel('Flies wanted a week').press('Enter');
    expect(await textOf(page, 'text=tubs a week')).toContain('Start 4 tubs a week; 20 on the shelf at once');
    await page.close();
  });
});

/** One batch, so that there is a label to look at. */
async function writeBatch(page: Page): Promise<void> {
  await page.evaluate(() => (location.hash = '#/prepare/leaves'));
  await page.getByLabel('Leaves, loose').fill('43.51');
  await page.getByLabel('Collected at').fill('Fern Hill wood');
  await page.getByLabel('Collected at').press('Enter');
  await page.getByRole('article').waitFor();
}

const parts = [
  'prepare',
  'prepare/J02/dates',
  'prepare/jobs',
  'prepare/J03/checks/T07',
  'prepare/J03/leaves',
  'prepare/J02/watch',
  'prepare/J06/took',
  'cards/J03',
  'cultures/C1',
  'cultures/C5',
  ...['survey', 'prep', 'treatment', 'labels', 'build', 'watch', 'animals-in', 'handover', 'care', 'areas'].map(
    (card) => `cards/J03/${card}`,
  ),
];

describe('for everybody', () => {
  test.each([
    { width: 1440, height: 900, scheme: 'light' },
    { width: 320, height: 256, scheme: 'dark' },
  ] as const)(
    'no part and no card has an accessibility fault at $width, $scheme',
    async (window) => {
      const page = await pages.open('prepare', window);
      const faults: string[] = [];
      await writeBatch(page);
      for (const place of parts) {
        await page.evaluate((hash) => (location.hash = hash), `#/${place}`);
        await page.waitForFunction(
          (part) =>
            document.querySelector('main article, main [role="group"], main section') !== null &&
            location.hash.endsWith(part),
          place,
        );
        faults.push(...(await axeFaults(page)).map((fault) => `${place}: ${fault}`));
        const across = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        if (across > 1) faults.push(`${place}: ${across} px wider than the window`);
      }
      expect(faults).toEqual([]);
      await page.close();
    },
    180_000,
  );

  test('no page asked for a style or a script that the policy refuses', () => {
    expect(pages.complaints()).toEqual([]);
  });
});
