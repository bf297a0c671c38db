import type { Clock } from './clock.ts';

/** A slice ends after this much of a frame; the rest of the frame is for painting. */
const SLICE_MS = 8;

/** Works for one slice of a frame; `more` does one step and returns whether work is left, and so does this. */
export function hasMoreAfterSlice(more: () => boolean, clock: Pick<Clock, 'now'>): boolean {
  const end = clock.now().getTime() + SLICE_MS;
  while (more()) if (clock.now().getTime() >= end) return true;
  return false;
}
