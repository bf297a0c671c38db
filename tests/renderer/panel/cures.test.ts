import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { chosen, goTo, plain } from '#tests/browser/bench-hands.ts';
import { noneComplained, useServedBook } from '#tests/browser/use-served-book.ts';
import { writeIn, type Act } from '#tests/browser/write-in.ts';

const pages = useServedBook();
let page: Page;

/** The tank of the demo's T07 before anybody measured its dam. */
const withoutDam: Act = (records) => {
  const from = records.tank.get('T07');
  if (!from) throw new Error('no T07');
  const { damHeightMm: _, ...to } = from;
  return { ok: true, value: { label: 'no dam', added: [], removed: [], updated: [{ kind: 'tank', from, to }] } };
};

async function says(part = '#side-panel'): Promise<string> {
  return plain(await page.locator(part).innerText());
}

describe('a flag on the size bench', () => {
  beforeAll(async () => {
    page = await pages.begin('bench');
  });

  test('has its cures beside it; one is taken by the keyboard with one press, and is undone like any edit', async () => {
    await goTo(page, 'Cool enough', 'T07');
    const cures = page.locator('#side-panel').getByRole('status', { name: 'What would mend it' });
    await expect.poll(async () => plain(await cures.innerText())).toContain('1 lamp, and less light: hottest day');
    await cures.getByRole('button', { name: 'Take it' }).last().focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => says()).not.toContain('What does not hold');
    await page.keyboard.press('Control+z');
    await expect.poll(() => says()).toContain('What does not hold');
  });
});

describe('a dam that nobody measured', () => {
  beforeAll(async () => {
    page = await pages.begin('prepare/J01/checks/T07', (file) => writeIn(file, [withoutDam]));
  });

  test('is one line on the sheet of checks, and its link leads to the box', async () => {
    const link = page.getByRole('link', { name: 'T07: dam not measured; 18 checks wait for it.' });
    await expect.poll(() => says('#work')).not.toContain('stand higher than the dam');
    await link.click();
    await expect.poll(() => chosen(page)).toContain('Dam, T07');
    await expect.poll(() => says()).toContain('18 checks wait for it.');
  });

  test('a check that waits for it leads there too', async () => {
    await goTo(page, 'Layers fit below the dam', 'T07');
    await expect.poll(() => says()).toContain('Cannot be worked yet: dam not measured.');
    await page.locator('#side-panel').getByRole('button', { name: 'Go to Dam' }).click();
    await expect.poll(() => chosen(page)).toContain('Dam, T07');
  });
});

noneComplained(pages);
