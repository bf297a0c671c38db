import type { Page } from 'playwright-core';

export const paperFormats = ['A4', 'Letter'] as const;

/** Number of pages of a view when it is printed. */
export async function pagesPrinted(page: Page, format: (typeof paperFormats)[number]): Promise<number> {
  const pdf = await page.pdf({ format, printBackground: true });
  return [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)].length;
}
