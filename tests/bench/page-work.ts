import type { CDPSession, Page } from 'playwright-core';
import { timesOf, type Times } from './measure.ts';
import { timed, watchPage } from './painted.ts';

/** What one key costs a page: processor time of its main thread, and wall time to the painted frame, ms. */
export interface KeyCost {
  readonly work: Times;
  readonly painted: Times;
  /** Tasks over 50 ms in all presses. */
  readonly long: number;
}

export interface Press {
  readonly key: string;
  readonly times: number;
  /** Brings the page to where the key is pressed; not counted. */
  readonly before?: (turn: number) => Promise<unknown>;
  /** After it has been counted. */
  readonly after?: (turn: number) => Promise<unknown>;
}

/** Long enough for the frame of a key and what follows it. */
const SETTLED_MS = 60;

/** Presses a key again and again, with the page at rest before each. */
export async function costOfKey(page: Page, { key, times, before, after }: Press): Promise<KeyCost> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await watchPage(page);
  const work: number[] = [];
  const { painted, long } = await timed(page, key, async () => {
    for (let turn = 0; turn < times; turn += 1) {
      await before?.(turn);
      await page.waitForTimeout(SETTLED_MS);
      const idle = await workIn(session, page);
      work.push(Math.max(0, (await workIn(session, page, key)) - idle));
      await after?.(turn);
    }
  });
  await session.detach();
  return { work: timesOf(work), painted: timesOf(painted), long };
}

/** The main thread's processor time while a key is pressed, or while as long nothing is, ms. */
async function workIn(session: CDPSession, page: Page, key?: string): Promise<number> {
  const start = await taskMs(session);
  if (key !== undefined) await page.keyboard.press(key);
  await page.waitForTimeout(SETTLED_MS);
  return (await taskMs(session)) - start;
}

async function taskMs(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0) * 1000;
}
