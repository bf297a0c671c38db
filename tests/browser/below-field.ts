import type { Locator } from 'playwright-core';

/** What screen readers read after a field: its fault, or its hint. */
export function belowField(field: Locator): Promise<string> {
  return field.evaluate((element) => {
    const id = element.getAttribute('aria-describedby') ?? '';
    return (document.getElementById(id)?.textContent ?? '').replaceAll('\u00a0', ' ');
  });
}

/** Waits until a field reports a fault in its text, and returns the fault. */
export async function wrongBelow(field: Locator): Promise<string> {
  await field.and(field.page().locator('[aria-invalid="true"]')).waitFor();
  return belowField(field);
}
