import type { Room } from './bench-metrics.ts';

/** The room that the bench's host has now; asking makes the browser lay the page out. */
export function roomOf(host: HTMLElement): Room {
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  return { width: host.clientWidth, pageWidth: window.innerWidth, pageHeight: window.innerHeight, rem };
}
