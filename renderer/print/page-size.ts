import { effect, type ReadonlySignal } from '@preact/signals';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import type { Records, Workshop } from '#shared-calc/records/records.ts';

/** Prints on the workshop's paper, from the browser and into a PDF; without one, on the printer's own. */
export function keepPageSize(page: Document, records: ReadonlySignal<Records>): void {
  const sheet = new CSSStyleSheet();
  page.adoptedStyleSheets = [...page.adoptedStyleSheets, sheet];
  effect(() => sheet.replaceSync(pageSizeRule(workshopOf(records.value).paper)));
}

/**
 * The names of `A4` and `Letter` are those of the style language, in any case. Wide lists have a page of their own,
 * turned sideways.
 */
export function pageSizeRule(paper: Workshop['paper']): string {
  return paper === undefined
    ? '@page sideways { size: landscape; }'
    : `@page { size: ${paper}; } @page sideways { size: ${paper} landscape; }`;
}
