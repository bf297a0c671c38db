import type { LabelWanted } from './section-shapes.ts';

export interface LabelPlaced extends LabelWanted {
  /** Where its words stand, in the same measure as `at`. */
  readonly y: number;
}

/**
 * Labels in order of height, each as near its place as it may be with `apart` between neighbours
 * and the lowest not under `lowest`.
 */
export function placeLabels(wanted: readonly LabelWanted[], apart: number, lowest: number): readonly LabelPlaced[] {
  const placed: LabelPlaced[] = [];
  let free = lowest;
  for (const label of wanted.toSorted((a, b) => a.at.y - b.at.y)) {
    const y = Math.max(free, label.at.y);
    placed.push({ ...label, y });
    free = y + apart;
  }
  return placed;
}
