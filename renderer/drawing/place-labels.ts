import type { LabelWanted } from './section-shapes.ts';

export interface LabelPlaced extends LabelWanted {
  /** Height of its words, in the same unit as `at`. */
  readonly y: number;
}

/**
 * Labels in order of height, each as near its wanted height as possible with `apart` between neighbours
 * and the lowest not below `lowest`.
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
