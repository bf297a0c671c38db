import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';

/** Cover panes of one size, as the glass cutter needs them. */
export interface PaneCut {
  readonly column: string;
  /** For all builds of the size. */
  readonly pieces: number;
  readonly lengthMm: number;
  readonly depthMm: number;
  readonly glassMm: number;
}

const lines = { pieces: 'panes', lengthMm: 'pane_length', depthMm: 'pane_depth', glassMm: 'cover_glass' } as const;

/** The panes of every size that has some; none of a recipe without cover panes, or while a figure is missing. */
export function paneCuts(bench: Bench): readonly PaneCut[] {
  const { lines: all, columns } = bench.input();
  if (!Object.values(lines).every((name) => all.some((line) => line.name === name))) return [];
  return columns.flatMap(({ key, count }) => {
    const pieces = figureOf(bench, key, lines.pieces);
    const [lengthMm, depthMm, glassMm] = [lines.lengthMm, lines.depthMm, lines.glassMm].map((name) =>
      figureOf(bench, key, name),
    );
    if (!pieces || !lengthMm || !depthMm || !glassMm) return [];
    return [{ column: key, pieces: pieces * count, lengthMm, depthMm, glassMm }];
  });
}

/** In mm, and pieces as they are; 0 where it is not known. */
function figureOf(bench: Bench, column: string, name: string): number {
  const { value } = bench.box(column, name);
  const unit = unitOf(name === lines.pieces ? 'each' : 'mm');
  return typeof value === 'number' ? cleanNoise(fromBase(value, unit)) : 0;
}
