import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { figureFor } from '#shared-calc/bench/figure-for.ts';

/** Cover panes of one size, as the glass cutter needs them. */
export interface PaneCut {
  readonly column: string;
  /** For all builds of the size. */
  readonly pieces: number;
  readonly lengthMm: number;
  readonly depthMm: number;
  readonly glassMm: number;
}

const uses = { lengthMm: 'paneLength', depthMm: 'paneDepth', glassMm: 'coverGlass' } as const;

/** The cover panes of every size; none for a recipe without cover panes, or while a figure is missing. */
export function paneCuts(bench: Bench): readonly PaneCut[] {
  return bench.input().columns.flatMap(({ key, count }) => {
    const pieces = figureFor(bench, key, 'panes', 'each');
    const [lengthMm, depthMm, glassMm] = [uses.lengthMm, uses.depthMm, uses.glassMm].map((use) =>
      figureFor(bench, key, use, 'mm'),
    );
    if (!pieces || !lengthMm || !depthMm || !glassMm) return [];
    return [{ column: key, pieces: pieces * count, lengthMm, depthMm, glassMm }];
  });
}
