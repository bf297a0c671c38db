/** Up and Down move to the previous or next link or button of a list, Home and End to the first and last. */
export function walkLinks(event: KeyboardEvent): void {
  walkOver(event, 'a[href], [data-walk]');
}

/** The same over other elements of a list. */
export function walkOver(event: KeyboardEvent, which: string): void {
  const list = event.currentTarget;
  if (!(list instanceof HTMLElement) || event.altKey || event.ctrlKey || event.metaKey) return;
  const stops = [...list.querySelectorAll<HTMLElement>(which)];
  const here = stops.findIndex((stop) => stop === document.activeElement);
  const next = here < 0 ? undefined : stops[stepTo(event.key, here, stops.length)];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

function stepTo(key: string, here: number, count: number): number {
  if (key === 'ArrowDown') return Math.min(here + 1, count - 1);
  if (key === 'ArrowUp') return Math.max(here - 1, 0);
  if (key === 'Home') return 0;
  return key === 'End' ? count - 1 : -1;
}
