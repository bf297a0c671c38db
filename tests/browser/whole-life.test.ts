import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import type { Actual } from '#shared-calc/records/records.ts';
import { figures, goTo, plain, stored, write } from './bench-hands.ts';
import { pickIn } from './pick-in.ts';
import { pageDay, type Prepare } from './served-book.ts';
import { useServedBook } from './use-served-book.ts';
import { writeIn, type Act } from './write-in.ts';

/*
 * One job from its first message to its last visit, by what the builder clicks and types. T05 Full, handover wanted
 * for 28 April 2027, today 8 March. Each figure is worked by hand beside its step from the start data of the demo.
 */

const pages = useServedBook();

/** Four T05 of before: their drainage took 1.0, 1.1, 1.3 and 1.4 times the 11.41 min planned. */
const earlier: readonly number[] = [11.41, 12.55, 14.83, 15.97];

const withEarlierJobs: Prepare = (file) =>
  writeIn(
    file,
    earlier.map((minutes, at): Act => {
      const sizes = [{ tank: 'T05', count: 1 }];
      return (records) => {
        const title = `Earlier ${at + 1}`;
        const made = newJob(records, { title, recipe: 'H1', sizes, writings: [], by: 'client', on: '2026-10-01' });
        if (!made.ok) return made;
        const record = tookOf(made.value.job, minutes);
        return {
          ok: true,
          value: { ...made.value.change, added: [...made.value.change.added, { kind: 'actual', record }] },
        };
      };
    }),
  );

function tookOf(job: string, value: number): Actual {
  return { id: `${job}.drainage_work`, job, line: 'drainage_work', value, unit: 'min', on: '2026-10-20', note: '' };
}

/** The text of a part of the page, with plain spaces. */
async function says(page: Page, part = '#work'): Promise<string> {
  return plain(await page.locator(part).first().innerText());
}

/** Waits until a part of the page contains all these words. */
async function reads(page: Page, words: readonly string[], part = '#work'): Promise<void> {
  for (const each of words) await expect.poll(() => says(page, part), { interval: 25, timeout: 5000 }).toContain(each);
}

async function follow(page: Page, link: string | RegExp): Promise<void> {
  await page.getByRole('link', { name: link }).first().click();
}

async function press(page: Page, button: string): Promise<void> {
  await page.getByRole('button', { name: button, exact: true }).first().click();
}

async function fill(page: Page, label: string | RegExp, text: string): Promise<void> {
  const entry = page.getByLabel(label, { exact: typeof label === 'string' }).first();
  await entry.fill(text);
  await entry.press('Enter');
}

/** From anywhere to the card of the job. */
async function toItsCard(page: Page): Promise<void> {
  await page.evaluate(() => (location.hash = '#/jobs/J06'));
  await page.getByRole('article').waitFor();
}

async function toPart(page: Page, part: string): Promise<void> {
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await page.getByRole('navigation', { name: 'Parts of the prep plan' }).getByRole('link', { name: part }).click();
}

async function onPaper(page: Page, card: string): Promise<void> {
  await page.getByRole('link', { name: 'Cards', exact: true }).click();
  await page.getByRole('main').getByRole('listitem').getByRole('link').filter({ hasText: card }).first().click();
}

async function moveOn(page: Page, ...states: readonly string[]): Promise<void> {
  await toItsCard(page);
  for (const state of states) {
    await press(page, `Move on to ${state}`);
    await overrule(page, state);
    await expect.poll(() => page.getByLabel('State', { exact: true }).inputValue(), { interval: 25 }).toBe(state);
  }
}

/** Something always stands against it: the hot day may not hold. From built on that needs a reason and who decides. */
async function overrule(page: Page, state: string, button = `Move on to ${state}`): Promise<void> {
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('list', { name: 'What stands against it' }).waitFor();
  if (['built', 'watching', 'handed over'].includes(state)) {
    await dialog.getByLabel('Why all the same').fill('Agreed with the client');
    await dialog.getByLabel('Who decides').selectOption({ label: 'Builder' });
  }
  await dialog.getByRole('button', { name: button }).click();
}

async function issue(page: Page): Promise<void> {
  await press(page, 'Issue');
  await page.getByRole('dialog').getByRole('button', { name: 'Issue' }).click();
}

async function enquire(page: Page): Promise<void> {
  await press(page, 'New job');
  const sheet = page.getByRole('dialog');
  await sheet.getByLabel('Title').fill('Reading room');
  await sheet.getByLabel('Client').fill('Brackenlume Library');
  await sheet.getByLabel('Animals wanted').fill('Small frogs');
  await sheet.getByLabel('Who is near it').fill('Readers of all ages');
  await sheet.getByLabel('Handover wanted').fill('2027-04-28');
  await sheet.getByRole('button', { name: 'Make the job' }).click();
  await reads(page, ['J06 Reading room', 'Move on to surveyed'], 'article');
}

async function survey(page: Page): Promise<void> {
  await fill(page, 'Shelf rating', '60');
  await press(page, 'The site is surveyed');
  await overrule(page, 'surveyed');
  await reads(page, ['Move on to quoted'], 'article');
}

/**
 * On the sheet of checks: at worst 60.09 kg against 80 % of the 60 kg surveyed.
 * T05: glass (0.267 + 2.09 x 0.6) x 5 x 2.5 = 19.012; drainage 9.345 x 0.5 = 4.673; capping 3.088 x 0.95 = 2.934;
 * soil 22.4105 x 0.57336 = 12.849; litter 8.01 x 0.035 = 0.280; water 0.267 x 25 x 0.4 = 2.670; 2 branches, a tube and
 * 5 pods 1.8 + 0.45 + 0.1 = 2.350; panel 0.36 / 0.18 x 0.7 = 1.400; 16 plants 0.960; cover 2.494; 2 lamps 1.8; top 2.
 * Together 53.42. With the drain blocked, soil at 65 % for 40 % adds 22.4105 x 0.25 = 5.603, and water in the gap adds
 * 0.267 x 10 x 0.4 = 1.068.
 */
async function threeSizes(page: Page): Promise<void> {
  await fill(page, 'Tanks, and how often each', 'T03, T05, T07');
  await follow(page, 'Its quote');
  await follow(page, 'Options page');
  await reads(page, ['Price, cr 1,303.24 1,631.46 2,156.15', 'Weight of one, filled 36 kg 53.4 kg 86.3 kg']);
  await toPart(page, 'Sheet of checks');
  await follow(page, /^T05/);
  await reads(page, ['60.09 kg against 48.00 kg: 12.09 kg short.']);
}

/**
 * By hand: 211.43 tank, 90.65 media, 154.00 wood, 33.23 glass, 125.71 light, 86.43 mist, 130.00 plants, 35.00
 * microfauna, 602.00 work are 1,468.45; 12 % of 1,303.45 and 4 % of 165.00 on it; 40 % is 652.58, up to 655.
 */
async function quoteIt(page: Page): Promise<void> {
  await toItsCard(page);
  await fill(page, 'Tanks, and how often each', 'T05');
  await follow(page, 'Its quote');
  await reads(page, ['Price before tax 1,468.45', 'Price, cr 1,631.46', 'Deposit with the order 655.00']);
  await issue(page);
  await reads(page, ['Quote Q-0001, revision A']);
}

/**
 * Litter 20 in place of 30 mm: 0.267 x 20 x 12.2 x 1.10 = 71.66 g in place of 107.49, at 0.052 a gram 3.73 in place
 * of 5.59; media cost 52.53 in place of 54.39, over 0.6 that is 87.55 in place of 90.65.
 */
async function revise(page: Page): Promise<void> {
  await toItsCard(page);
  await follow(page, 'Its size bench');
  await page.waitForSelector('[role="gridcell"]');
  await write(page, ['Litter depth', 'T05'], '20 mm');
  await stored(page, 'litter depth of T05 to 20 mm');
  await goTo(page, 'Oak leaves, dry', 'T05');
  expect(await figures(page, 'Oak leaves, dry', ['T05'])).toEqual(['71.66']);
  await toItsCard(page);
  await follow(page, 'Its quote');
  await issue(page);
  await reads(page, ['Quote Q-0001, revision B', 'Price, cr 1,627.99']);
  await follow(page, 'What changed since A');
  await reads(page, ['Drainage, soil and leaves 90.65 87.55 -3.10', 'Price before tax 1,468.45 1,465.35 -3.10']);
}

async function payDeposit(page: Page): Promise<void> {
  await moveOn(page, 'accepted');
  await page.getByLabel('Deposit', { exact: true }).fill('655');
  await press(page, 'Record the deposit');
  await overrule(page, 'deposit in', 'Record it');
  await reads(page, ['655.00 cr in on 8 March 2027', 'The deposit is in: the shopping run may take it.'], 'article');
}

/**
 * Clay: 0.267 x 35 / 0.98 x 1.03 = 9.82 L, 7 L in the store, so one bag of 10 at 9.80 and 7.18 L left. The store has
 * the leaves, pods, timer and sealant. Marlvale: 4 x 3.10 + 4 x 4.30 + 2 x 9.25 + 3 x 3.90 + 3 x 3.90 = 71.50 and 9.50.
 */
async function buy(page: Page): Promise<void> {
  await follow(page, 'Buying');
  await reads(page, [
    'M01 Expanded clay 8-16 mm 9.82 L 7.00 L 1 × 10 L 9.80 9.80 7.18 L',
    'Marlvale Plant House goods 71.50, carriage 9.50, landed 81.00 cr Order by Wednesday 10 March 2027',
  ]);
  await press(page, 'Place 5 orders');
  await page.getByRole('dialog').getByRole('button', { name: 'Place 5 orders' }).click();
  await reads(page, ['Ordered for J06. What comes in is taken in there.'], 'footer');
}

/** Mon 8 Mar and 4 working days is Fri 12, Tue 16 Mar and 30 d Thu 15 Apr, and 21 d Thu 6 May: scenario 11. */
async function planIt(page: Page): Promise<void> {
  await toPart(page, 'Dates of the job');
  await reads(page, [
    '8 days late because of plant quarantine: the handover moves from Wednesday 28 April to Thursday 6 May.',
    'Tuesday 16 March 2027 Plants in, to quarantine due 16 March 2027 (decides)',
    'Thursday 15 April 2027 Build',
  ]);
}

/**
 * 71.66 g at 12.2 g a litre are 5.87 L: one pot. Over 85 °C: 12 of the 77 K in 20 min are 3.12 min, then 15, then
 * 12 of the 40 K in 10 min are 3.00: 21.1 min.
 */
async function treatLeaves(page: Page): Promise<void> {
  await toPart(page, 'Leaf treatment');
  await reads(page, ['empty: the 5.87 L of the open job', 'Boil 1 97.81 20 15 50 50 min 14 min suggested']);
  await page.getByLabel('Collected at').fill('Fern Hill wood');
  await press(page, 'Write down a batch');
  await page.getByLabel(/^Core probe/).fill('0 20\n20 97\n35 97\n45 57');
  await press(page, 'Take the log');
  await reads(page, ['Core up to 97.0 °C; 21.1 of 3 min (3 min at 85 °C or over, in hot water).'], 'article');
  await follow(page, 'Its label on paper');
  await reads(page, ['Small oak leaves, dry TB-001 5.87 L loose Collected: Fern Hill wood']);
}

/** 20,000 / (1 + 1.5 e^(0.07 x 21)) = 2,658.2 a m2, x 0.267 = 709.7; 28 d before the build is Thu 18 March. */
async function claimCulture(page: Page): Promise<void> {
  await follow(page, 'Cultures');
  await reads(page, ['Thursday 15 April 2027 J06 Reading room 710 new 1', 'new 1: started by Thursday 18 March 2027']);
  await press(page, 'Start a tub');
  await pickIn(page.getByLabel('Kept for'), 'J06');
  // 8 March and 28 d.
  await reads(page, ['tub K1 kept for J06'], 'footer');
  await reads(page, ['K1 1,250 animals, may give 0; grows, ready on 5 April 2027']);
}

/** The clay of the one order that came in; of leaves the store had 500 g, and 71.66 of them went in. */
async function build(page: Page): Promise<void> {
  await follow(page, 'Buying');
  await follow(page, 'Orders');
  const media = page.getByRole('row').filter({ hasText: "Hollin Lane Growers' Supply" });
  await media.getByRole('link').click();
  await press(page, 'Receive');
  await page.getByRole('dialog').getByRole('button', { name: 'Receive' }).click();
  await onPaper(page, 'Build card');
  await reads(page, [
    'Expanded clay 8-16 mm 9.82 L',
    'lay it 35 mm deep',
    'Cut 660 mm × 505 mm, turned up 30 mm all round.',
  ]);
  await moveOn(page, 'in quarantine', 'ready to build', 'built');
  await follow(page, 'Buying');
  await follow(page, 'Store');
  await reads(page, ['428.34 g', '7.18 L']);
}

/** 24 h from 22 to 25.5 and 24 h back, all of it within 18 to 27. */
async function watchIt(page: Page): Promise<void> {
  await toPart(page, 'Watch');
  await page.getByLabel(/^Readings: time/).fill('0 22 90\n24 25.5 95\n48 22 90');
  await page.getByLabel('Signed by').fill('Ottoline');
  await press(page, 'Keep and sign');
  await reads(page, [
    'Kept on 8 March 2027, signed by Ottoline.',
    'Watched 48.0 h: 22.0 to 25.5 °C, within 18 to 27 for 100 % of the time; humidity 90.0 to 95.0 %, within 75 to 95 for 100 %.',
  ]);
}

/**
 * Room for 0.267 x (35 - 10) x 0.40 = 2.67 L; 135 mL of mist a day, of which 0.126825 m3 of air takes 34.5 in winter
 * and 22.1 in summer: 26.6 and 23.6 d, so every 3 weeks. 9 L of 135 mL last 66 d, cleaned every 14.
 */
async function handOver(page: Page): Promise<void> {
  await moveOn(page, 'watching', 'handed over');
  await onPaper(page, 'Handover card');
  await reads(page, [
    'Handed over Monday 8 March 2027.',
    'Every 3 weeks: Drain the water below the mesh',
    'Every 14 days: Empty, clean and rinse the can',
  ]);
}

/** Handed over on Mon 8 March, the day of the walk; a week and 28 d after it. */
async function firstVisit(page: Page): Promise<void> {
  await onPaper(page, 'Care calendar Visits');
  await reads(page, ['Monday 15 March 2027: Call', 'Monday 5 April 2027: First visit']);
  await moveOn(page, 'in service');
  await toPart(page, 'What it took');
  await fill(page, 'Plants lost', '1');
  await stored(page, 'J06: plants lost took 1 each');
  await fill(page, /^Drainage fills in/, '21');
  await stored(page, 'J06: drainage fills in took 21 d');
}

/**
 * Planned 3 + 0.9 x 9.345 = 11.41 min; it took 13.69, 1.20 times that: the middle of 1.0, 1.1, 1.2, 1.3 and 1.4.
 * On a T05 it is 11.41 x 1.2 = 13.69 min from now on.
 */
async function teach(page: Page): Promise<void> {
  await reads(page, ['planned 11.4 min']);
  await fill(page, 'Drainage', '13.69');
  const lesson = page.getByRole('region', { name: 'Lessons' }).getByRole('row', { name: 'drainage_placed' });
  await expect
    .poll(async () => plain(await lesson.innerText()), { interval: 25 })
    .toContain('1.2 * (3 min + 0.9 min/L * drainage_placed)');
  await pickIn(page.getByLabel('Effect shown on'), 'T05');
  await expect
    .poll(async () => plain(await lesson.innerText()), { interval: 25 })
    .toContain('11.4 min becomes 13.7 min');
  await lesson.getByRole('button', { name: 'Teach the house' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Put in force' }).click();
  await stored(page, 'house taught: drainage_work to 1.2 * (3 min + 0.9 min/L * drainage_placed)');
}

const steps = [
  enquire,
  survey,
  threeSizes,
  quoteIt,
  revise,
  payDeposit,
  buy,
  planIt,
  treatLeaves,
  claimCulture,
  build,
  watchIt,
  handOver,
  firstVisit,
  teach,
];

describe('the whole life of one job', () => {
  test('enquiry, survey, three sizes, quote, revision, deposit, run, plan, leaves, culture, build, watch, handover, visit, what it took', async () => {
    const page = await pages.begin('jobs', withEarlierJobs);
    for (const step of steps) await step(page);
    expect([pageDay, pages.complaints(), pages.strangers]).toEqual(['2027-03-08', [], []]);
  }, 180_000);
});
