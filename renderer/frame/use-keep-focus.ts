import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

/** When `shown` changes and the focused element of the part is gone, `take` moves the focus before the next paint. */
export function useKeepFocus(part: RefObject<HTMLElement | null>, shown: unknown, take: () => void): void {
  const holds = () => part.current?.contains(document.activeElement) ?? false;
  const hadFocus = holds();
  useLayoutEffect(() => {
    if (hadFocus && !holds()) take();
  }, [shown]);
}
