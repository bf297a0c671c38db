import { useMemo } from 'preact/hooks';

let made = 0;

/**
 * An id that is unique on the page. Preact's own is unique only within one root, and cells and cards have their own
 * roots.
 */
export function useOwnId(): string {
  return useMemo(() => `own-${(made += 1)}`, []);
}
