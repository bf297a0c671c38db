import type { Page } from 'playwright-core';

/** What the page's own clock measured since the last read. */
export interface Told {
  /** From each watched key or press to the end of the frame that showed its effect, ms. */
  readonly painted: readonly number[];
  /** Between one frame and the next, ms. */
  readonly frames: readonly number[];
  /** Tasks that ran over 50 ms. */
  readonly long: number;
}

/** Makes the page time each start, up to the end of the first frame in which `selector` exists. */
export async function watchStarts(page: Page, selector: string): Promise<void> {
  await page.addInitScript((sought) => {
    const look = () => {
      if (!document.querySelector(sought)) requestAnimationFrame(look);
      else setTimeout(() => Object.assign(window, { stood: performance.now() }));
    };
    requestAnimationFrame(look);
  }, selector);
}

/** From the start of navigation, ms. */
export async function stoodAt(page: Page): Promise<number> {
  const stood = await page.waitForFunction(() => (window as unknown as { stood?: number }).stood);
  return (await stood.jsonValue()) ?? 0;
}

/** Starts measuring: frames and long tasks always, keys and presses while they are `timed`. */
export async function watchPage(page: Page): Promise<void> {
  await page.evaluate(() => {
    const told = { painted: [] as number[], frames: [] as number[], long: 0, wanted: '' };
    Object.assign(window, { told });
    const turn = new MessageChannel();
    let from = 0;
    turn.port1.onmessage = () => told.painted.push(performance.now() - from);
    const time = (event: Event) => {
      const name = event instanceof KeyboardEvent ? event.key : event.type;
      if (name !== told.wanted) return;
      from = event.timeStamp;
      requestAnimationFrame(() => turn.port2.postMessage(undefined));
    };
    for (const kind of ['keydown', 'click']) window.addEventListener(kind, time, { capture: true });
    let before = performance.now();
    const frame = (now: number) => {
      told.frames.push(now - before);
      before = now;
      requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
    new PerformanceObserver((list) => (told.long += list.getEntries().length)).observe({ type: 'longtask' });
  });
}

/** Times keys or presses of this name while `act` runs. */
export async function timed(page: Page, wanted: string, act: () => Promise<void>): Promise<Told> {
  await page.evaluate((name) => {
    const { told } = window as unknown as {
      told: { wanted: string; long: number; painted: number[]; frames: number[] };
    };
    Object.assign(told, { wanted: name, long: 0, painted: [], frames: [] });
  }, wanted);
  await act();
  return page.evaluate(() => (window as unknown as { told: Told }).told);
}
