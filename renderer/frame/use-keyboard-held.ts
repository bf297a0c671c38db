import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

/** Where what had the keyboard within a part of the page goes as `shown` becomes another, the part takes it at once. */
export function useKeyboardHeld(part: RefObject<HTMLElement | null>, shown: unknown, take: () => void): void {
  const holds = () => part.current?.contains(document.activeElement) ?? false;
  const held = holds();
  useLayoutEffect(() => {
    if (held && !holds()) take();
  }, [shown]);
}
