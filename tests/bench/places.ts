import type { Page } from 'playwright-core';
import { places } from '#shared-calc/contract/places.ts';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { openServedBook } from '#tests/browser/served-book.ts';
import { writeIn } from '#tests/browser/write-in.ts';
import { ms, ratio, timesOf, type Told } from './measure.ts';

const JOBS = 300;
const TURNS = 5;

/** Opening each view with a book of 300 jobs, compared with the demo's book in the same run. */
export async function benchPlaces(): Promise<readonly Told[]> {
  const many = await openingTimes([manyJobs]);
  const few = await openingTimes([]);
  return places.map(({ id, title }) => {
    const [took, floor] = [many.get(id) ?? 0, few.get(id) ?? 0];
    return {
      what: `open ${title}, ${JOBS} jobs`,
      took: ms(took),
      floor: `the demo's book ${ms(floor)}`,
      ratio: ratio(took / floor),
      must: '',
    };
  });
}

type Writing = (records: Records) => Result<Change, never>;

async function openingTimes(writings: readonly Writing[]): Promise<ReadonlyMap<string, number>> {
  const pages = await openServedBook();
  try {
    await pages.begin('bench', (book) => writeIn(book, writings));
    const page = await pages.open('bench');
    await page.waitForTimeout(2000);
    const times = new Map<string, number>();
    for (const { id } of places) times.set(id, await openingTime(page, id));
    return times;
  } finally {
    await pages.close();
  }
}

/** From the link to the end of the frame that shows the view; between two openings the function book is shown. */
async function openingTime(page: Page, id: string): Promise<number> {
  const took: number[] = [];
  const away = id === 'function-book' ? 'workshop' : 'function-book';
  for (let turn = 0; turn < TURNS; turn += 1) {
    await followLink(page, away);
    took.push(await followLink(page, id));
  }
  return timesOf(took).median;
}

async function followLink(page: Page, id: string): Promise<number> {
  const took = await page.evaluate(async (hash) => {
    if (location.hash === hash) return 0;
    const start = performance.now();
    const followed = new Promise((resolve) => window.addEventListener('hashchange', resolve, { once: true }));
    location.hash = hash;
    await followed;
    await new Promise((resolve) => requestAnimationFrame(resolve));
    await new Promise((resolve) => requestAnimationFrame(resolve));
    return performance.now() - start;
  }, `#/${id}`);
  await page.waitForTimeout(100);
  return took;
}

/** Copies of the demo's first job with its sizes, paid and with a handover, one a day. */
function manyJobs({ job, size }: Records): Result<Change, never> {
  const [first] = job.values();
  if (!first) throw new Error('the demo has no job');
  const sizes = [...size.values()].filter((each) => each.job === first.id);
  const added = Array.from({ length: JOBS }, (_, at) => `B${at}`).flatMap((id) => [
    { kind: 'job' as const, record: { ...first, id, title: `Job ${id}`, state: 'deposit in' as const } },
    ...sizes.map((each) => ({ kind: 'size' as const, record: { ...each, id: `${id}-${each.id}`, job: id } })),
  ]);
  return ok({ ...emptyChange('many jobs'), added });
}
