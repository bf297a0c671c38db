import type { Locator, Page } from 'playwright-core';
import { z } from 'zod';

/** A box of the bench as it is painted and as it is read out. */
export interface SeenBox {
  readonly figure: string;
  /** Words at the left. */
  readonly said: string;
  readonly spoken: string;
  readonly form: 'well' | 'flat';
  readonly source: string;
  readonly state: string;
  /** Whether a sign is drawn beside the words. */
  readonly sign: boolean;
}

/** The drawn box of a line and a size. Their names are what a reader is told. */
export function boxOf(page: Page, line: string, size: string): Locator {
  const begins = new RegExp(`^${escaped(line)}, ${escaped(size)}(,|$)`);
  return page.locator('.strips .ag-cell.box', { has: page.locator('.unseen', { hasText: begins }) });
}

/** Brings a box into sight by the find field, and chooses it; the panel is of it then. */
export async function goTo(page: Page, line: string, size: string): Promise<void> {
  for (const words of await stillWanted(page, [line, size])) {
    await page.keyboard.press('/');
    await page.keyboard.insertText(words);
    await page.keyboard.press('Enter');
  }
  await page.waitForFunction(
    ([wantedLine, wantedSize]) => {
      const spoken = document.querySelector('.strips .ag-cell.chosen .unseen')?.textContent;
      const sidePanel = document.querySelector('.side-panel header')?.textContent;
      return (
        spoken?.startsWith(`${wantedLine}, ${wantedSize}`) &&
        sidePanel?.includes(wantedLine) &&
        sidePanel.includes(wantedSize)
      );
    },
    [line, size] as const,
    // A window that is not in front paints no frames to wait for.
    { polling: 50 },
  );
}

/** What of a line and a size the box that has the keyboard alone is not yet of. */
function stillWanted(page: Page, [line, size]: readonly [string, string]): Promise<readonly string[]> {
  return page.evaluate(
    ([wantedLine, wantedSize]) => {
      const alone = document.querySelectorAll('.strips .ag-cell.in-range').length < 2;
      const cell = alone ? document.activeElement?.closest('.strips .ag-cell.chosen') : undefined;
      const spoken = `${cell?.querySelector('.unseen')?.textContent ?? ''},`;
      return [
        ...(spoken.startsWith(`${wantedLine}, `) ? [] : [wantedLine]),
        ...(spoken.includes(`, ${wantedSize},`) ? [] : [wantedSize]),
      ];
    },
    [line, size] as const,
  );
}

/** Writes in a box as a person does: what is typed replaces what stands there. */
export async function write(page: Page, [line, size]: readonly [line: string, size: string], text: string) {
  await goTo(page, line, size);
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** What is drawn of boxes by now; a box that is not drawn reads `not drawn`. */
export async function figures(page: Page, line: string, sizes: readonly string[]): Promise<readonly string[]> {
  const seen = await Promise.all(sizes.map((size) => seenBox(page, line, size)));
  return seen.map((box) => box?.figure ?? 'not drawn');
}

export async function seenBox(page: Page, line: string, size: string): Promise<SeenBox | undefined> {
  const begins = `${line}, ${size}`;
  return page.evaluate(async (start) => {
    const cells = [...document.querySelectorAll('.strips .ag-cell.box')];
    const cell = cells.find((each) => `${each.querySelector('.unseen')?.textContent},`.startsWith(`${start},`));
    const box = cell?.querySelector<HTMLElement>('.well, .flat, .flaglist');
    if (!cell || !box) return undefined;
    // What is read out follows the figure a frame later.
    const isBehind = () => !textOf(cell.querySelector('.unseen')).includes(textOf(box.querySelector('.fig')));
    for (let turn = 0; turn < 100 && isBehind(); turn += 1) await new Promise((go) => setTimeout(go, 5));
    const { source = '', state = '' } = box.dataset;
    return {
      figure: textOf(box.querySelector('.fig')),
      said: textOf(box.matches('.flaglist') ? box : box.querySelector('.said')),
      spoken: textOf(cell.querySelector('.unseen')),
      form: box.classList.contains('well') ? ('well' as const) : ('flat' as const),
      source,
      state,
      sign: box.querySelector('svg.sign') !== null,
    };

    function textOf(each: Element | null): string {
      return (each?.textContent ?? '').replaceAll('\u00a0', ' ');
    }
  }, begins);
}

/** What a reader is told of the box that has the keyboard. */
export async function chosen(page: Page): Promise<string> {
  return plain(await page.locator('.strips .ag-cell.chosen .unseen').textContent());
}

/** What the quiet line says by now. */
export async function quietLine(page: Page): Promise<string> {
  return plain(await page.locator('.status').textContent());
}

/** Waits until the book itself names this edit as its last; else answers what it names. */
export async function stored(page: Page, label: string): Promise<void> {
  let last: string | undefined;
  for (let turn = 0; turn < 100 && last !== label; turn += 1) last = await lastEdit(page);
  if (last !== label) throw new Error(`the last edit of the book is "${last}", not "${label}"`);
}

const Told = z.object({ value: z.object({ undo: z.string().optional() }).optional() });

/** What the book itself names as its last edit. */
async function lastEdit(page: Page): Promise<string | undefined> {
  const answer = await page.evaluate(async () => {
    const headers = { 'content-type': 'application/json' };
    const response = await fetch('/call/book.info', { method: 'POST', headers, body: '{}' });
    return response.text();
  });
  return Told.parse(JSON.parse(answer)).value?.undo;
}

/** Words with plain spaces. */
export function plain(text: string | null): string {
  return (text ?? '').replaceAll(/\s+/g, ' ').trim();
}

function escaped(words: string): string {
  return words.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
