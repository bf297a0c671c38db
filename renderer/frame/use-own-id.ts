import { useMemo } from 'preact/hooks';

let made = 0;

/** An id that nothing else on the page has. Preact's own is unique in one root alone, and boxes and cards have roots of their own. */
export function useOwnId(): string {
  return useMemo(() => `own-${(made += 1)}`, []);
}
