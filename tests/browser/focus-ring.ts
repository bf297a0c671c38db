import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** The focused element: its accessible name, and what is wrong with its focus outline; empty if nothing is. */
export interface Keyboard {
  readonly on: string;
  readonly wrong: string;
}

/**
 * Looks for an outline of two pixels on the focused element, or on the field around it, or for the pencil corners of
 * the cell around it, within the window.
 */
export function keyboardOn(page: Page): Promise<Keyboard> {
  return page.evaluate(() => {
    const at = document.activeElement;
    if (!at || at === document.body) return { on: 'nothing', wrong: 'nothing has the keyboard' };
    const cell = at.closest('[role="gridcell"], [role="rowheader"]');
    const holders = [at, at.parentElement, at.closest('label')];
    const ring = holders.find((each) => each && hasRing(getComputedStyle(each))) ?? drawnAround(cell);
    const on = nameOf(at);
    if (!ring) return { on, wrong: `no ring on ${on}` };
    return { on, wrong: isInSight(ring) ? '' : `${on} is out of sight` };

    function drawnAround(each: Element | null): Element | undefined {
      return each && hasCorners(getComputedStyle(each, '::after')) ? each : undefined;
    }
    function hasCorners({ content, borderTopStyle, borderTopWidth, clipPath }: CSSStyleDeclaration): boolean {
      const line = content !== 'none' && borderTopStyle === 'solid' && Number.parseFloat(borderTopWidth) >= 2;
      return line && clipPath.startsWith('polygon');
    }
    function hasRing({ outlineStyle, outlineWidth, visibility }: CSSStyleDeclaration): boolean {
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2 && visibility === 'visible';
    }
    function isInSight(each: Element): boolean {
      const { left, right, top, bottom } = each.getBoundingClientRect();
      return right > 0 && bottom > 0 && left < innerWidth && top < innerHeight;
    }
    function nameOf(each: Element): string {
      const words =
        each.getAttribute('aria-label') ??
        labelOf(each) ??
        each.querySelector('[data-part="spoken"]')?.textContent ??
        each.textContent ??
        '';
      return words.replaceAll(/\s+/g, ' ').trim().slice(0, 80);
    }
    function labelOf(each: Element): string | null | undefined {
      const field = ['INPUT', 'TEXTAREA', 'SELECT'].includes(each.tagName) ? (each as HTMLInputElement) : undefined;
      return field?.labels?.[0]?.textContent;
    }
  });
}

/** Waits until an element of that name has the focus: a dialog takes and returns the focus only once it is drawn. */
export async function keyboardComesTo(page: Page, name: string): Promise<void> {
  await expect.poll(async () => (await keyboardOn(page)).on).toBe(name);
}

/** Presses keys one by one; returns the faults of the focus outline after each. */
export async function pressSeen(page: Page, keys: readonly string[]): Promise<string[]> {
  const wrong: string[] = [];
  for (const key of keys) {
    await page.keyboard.press(key);
    const now = await keyboardOn(page);
    if (now.wrong !== '') wrong.push(`after ${key}: ${now.wrong}`);
  }
  return wrong;
}

/** Presses Tab until an element of that name has the focus; every element on the way must show its focus. */
export async function tabTo(page: Page, name: string): Promise<string[]> {
  const wrong: string[] = [];
  for (let turn = 0; turn < 120; turn += 1) {
    const now = await keyboardOn(page);
    // After the last element of the page, the browser itself has the focus.
    if (now.wrong !== '' && now.on !== 'nothing' && turn > 0) wrong.push(now.wrong);
    if (now.on === name) return wrong;
    await page.keyboard.press('Tab');
  }
  return [...wrong, `Tab never comes to ${name}`];
}
