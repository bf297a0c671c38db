import type { Locator } from 'playwright-core';

/** What readers hear after a field: what is wrong with it, or its hint. */
export function belowField(field: Locator): Promise<string> {
  return field.evaluate((element) => {
    const id = element.getAttribute('aria-describedby') ?? '';
    return (document.getElementById(id)?.textContent ?? '').replaceAll('\u00a0', ' ');
  });
}

/** Waits until a field says that what stands in it is wrong, and gives that. */
export async function wrongBelow(field: Locator): Promise<string> {
  await field.and(field.page().locator('[aria-invalid="true"]')).waitFor();
  return belowField(field);
}
