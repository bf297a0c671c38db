/** The parts of the page in F6 order: each selects the element that takes the focus there. */
const parts = [
  'nav[aria-label="Places"] [aria-current]',
  '#work .ag-cell[data-chosen], #work .ag-cell[tabindex="-1"], #work h1',
  '#side-panel',
  '#help-panel',
  'footer button',
];

/** Focuses the next part that is on the page; after the last comes the first. */
export function focusNextPart(page: Document, back: boolean): void {
  const there = parts.flatMap((part) => {
    const at = firstOf(page, part);
    return at?.checkVisibility() ? [at] : [];
  });
  const here = there.findIndex((at) => regionOf(at)?.contains(page.activeElement));
  const next = here < 0 ? 0 : (here + (back ? there.length - 1 : 1)) % there.length;
  there[next]?.focus();
}

/** The first match; an earlier selector of the list wins over a later one. */
function firstOf(page: Document, list: string): HTMLElement | undefined {
  for (const word of list.split(', ')) {
    const found = page.querySelector<HTMLElement>(word);
    if (found) return found;
  }
  return undefined;
}

function regionOf(at: HTMLElement): Element | null {
  return at.closest('nav[aria-label="Places"], #work, #side-panel, #help-panel, footer');
}
