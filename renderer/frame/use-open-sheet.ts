import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** A sheet over the page that opens the moment it is there: the keys that follow are already its own. */
export function useOpenSheet(): RefObject<HTMLDialogElement | null> {
  const sheet = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => sheet.current?.showModal(), []);
  return sheet;
}
