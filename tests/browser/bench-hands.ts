import type { Locator, Page } from 'playwright-core';
import { z } from 'zod';
import { sessionItem } from '#shared-calc/contract/entry.ts';

/** A cell of the bench as it is painted and as it is read out. */
export interface SeenBox {
  readonly figure: string;
  /** Words at the left. */
  readonly said: string;
  readonly spoken: string;
  readonly form: 'well' | 'flat';
  readonly source: string;
  readonly state: string;
  /** Whether a sign is drawn next to the words. */
  readonly sign: boolean;
}

/** The drawn cell of a line and a size, found by the names that screen readers read. */
export function boxOf(page: Page, line: string, size: string): Locator {
  const begins = new RegExp(`^${escaped(line)}, ${escaped(size)}(,|$)`);
  return page.locator('[role="gridcell"]', { has: page.locator('[data-part="spoken"]', { hasText: begins }) });
}

/** Scrolls a cell into view with the find field and selects it; the panel then shows it. */
export async function goTo(page: Page, line: string, size: string): Promise<void> {
  for (const words of await stillWanted(page, [line, size])) {
    await page.keyboard.press('/');
    await page.keyboard.insertText(words);
    await page.keyboard.press('Enter');
  }
  await page.waitForFunction(
    ([wantedLine, wantedSize]) => {
      const spoken = document.querySelector('[data-chosen] [data-part="spoken"]')?.textContent;
      const sidePanel = document.querySelector('#side-panel header')?.textContent;
      return (
        spoken?.startsWith(`${wantedLine}, ${wantedSize}`) &&
        sidePanel?.includes(wantedLine) &&
        sidePanel.includes(wantedSize)
      );
    },
    [line, size] as const,
    // A window in the background paints no frames to wait for.
    { polling: 50 },
  );
}

/** The part of a line and a size that the focused cell does not have yet. */
function stillWanted(page: Page, [line, size]: readonly [string, string]): Promise<readonly string[]> {
  return page.evaluate(
    ([wantedLine, wantedSize]) => {
      const alone = document.querySelectorAll('[data-in-range]').length < 2;
      const cell = alone ? document.activeElement?.closest('[data-chosen]') : undefined;
      const spoken = `${cell?.querySelector('[data-part="spoken"]')?.textContent ?? ''},`;
      return [
        ...(spoken.startsWith(`${wantedLine}, `) ? [] : [wantedLine]),
        ...(spoken.includes(`, ${wantedSize},`) ? [] : [wantedSize]),
      ];
    },
    [line, size] as const,
  );
}

/** Types into a cell as a user does: the typed text replaces the old one. */
export async function write(page: Page, [line, size]: readonly [line: string, size: string], text: string) {
  await goTo(page, line, size);
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** The current text of cells; a cell that is not drawn reads `not drawn`. */
export async function figures(page: Page, line: string, sizes: readonly string[]): Promise<readonly string[]> {
  const seen = await Promise.all(sizes.map((size) => seenBox(page, line, size)));
  return seen.map((box) => box?.figure ?? 'not drawn');
}

export async function seenBox(page: Page, line: string, size: string): Promise<SeenBox | undefined> {
  const begins = `${line}, ${size}`;
  return page.evaluate(async (start) => {
    const cells = [...document.querySelectorAll('[role="gridcell"]')];
    const cell = cells.find((each) =>
      `${each.querySelector('[data-part="spoken"]')?.textContent},`.startsWith(`${start},`),
    );
    const box = cell?.querySelector<HTMLElement>('[data-form]');
    if (!cell || !box) return undefined;
    // Screen reader text follows the figure a frame later.
    const isBehind = () =>
      !textOf(cell.querySelector('[data-part="spoken"]')).includes(textOf(box.querySelector('[data-part="figure"]')));
    for (let turn = 0; turn < 100 && isBehind(); turn += 1) await new Promise((go) => setTimeout(go, 5));
    const { source = '', state = '' } = box.dataset;
    return {
      figure: textOf(box.querySelector('[data-part="figure"]')),
      said: textOf(box.matches('[data-form="flags"]') ? box : box.querySelector('[data-part="said"]')),
      spoken: textOf(cell.querySelector('[data-part="spoken"]')),
      form: box.dataset['form'] === 'well' ? ('well' as const) : ('flat' as const),
      source,
      state,
      sign: box.querySelector('svg') !== null,
    };

    function textOf(each: Element | null): string {
      return (each?.textContent ?? '').replaceAll('\u00a0', ' ');
    }
  }, begins);
}

/** The screen reader text of the focused cell. */
export async function chosen(page: Page): Promise<string> {
  return plain(await page.locator('[data-chosen] [data-part="spoken"]').textContent());
}

/** The current text of the status line. */
export async function quietLine(page: Page): Promise<string> {
  return plain(await page.locator('footer').textContent());
}

/** Waits until the book has this edit as its last; throws with its last edit otherwise. */
export async function stored(page: Page, label: string): Promise<void> {
  let last: string | undefined;
  for (let turn = 0; turn < 100 && last !== label; turn += 1) last = await lastEdit(page);
  if (last !== label) throw new Error(`the last edit of the book is "${last}", not "${label}"`);
}

const Told = z.object({ value: z.object({ undo: z.string().optional() }).optional() });

/** The label of the book's last edit. */
async function lastEdit(page: Page): Promise<string | undefined> {
  const answer = await page.evaluate(async (item) => {
    const authorization = `Bearer ${sessionStorage.getItem(item) ?? ''}`;
    const headers = { authorization, 'content-type': 'application/json' };
    const response = await fetch('/call/book.info', { method: 'POST', headers, body: '{}' });
    return response.text();
  }, sessionItem);
  return Told.parse(JSON.parse(answer)).value?.undo;
}

/** Words with plain spaces. */
export function plain(text: string | null): string {
  return (text ?? '').replaceAll(/\s+/g, ' ').trim();
}

function escaped(words: string): string {
  return words.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
