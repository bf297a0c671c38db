import type { Extent, Rect, Spot } from './range.ts';

export interface SpotText extends Spot {
  readonly text: string;
}

/**
 * Where pasted boxes go: one box fills the whole range, a block goes down and right from the range's
 * first box, or is repeated where the range is a whole number of blocks. What lies past the edge is left out.
 */
export function pastePlan(block: readonly (readonly string[])[], rect: Rect, extent: Extent): readonly SpotText[] {
  const height = block.length;
  const width = Math.max(0, ...block.map((row) => row.length));
  if (height === 0 || width === 0) return [];
  const rows = repeats(rect.bottom - rect.top + 1, height);
  const columns = repeats(rect.right - rect.left + 1, width);
  return positions(rect, { rows: rows * height, columns: columns * width }, extent).flatMap(({ row, column }) => {
    const text = block[(row - rect.top) % height]?.[(column - rect.left) % width];
    return text === undefined ? [] : [{ row, column, text }];
  });
}

/**
 * Fill right: each row's first box over the rest of its row. A range one size wide takes the box at its left.
 * `textAt` gives what would be copied there; `undefined` fills nothing.
 */
export function fillRightPlan(rect: Rect, textAt: (spot: Spot) => string | undefined): readonly SpotText[] {
  const from = rect.left === rect.right ? rect.left - 1 : rect.left;
  const plan: SpotText[] = [];
  for (let row = rect.top; row <= rect.bottom; row += 1) {
    const text = textAt({ row, column: from });
    if (text === undefined) continue;
    for (let column = from + 1; column <= rect.right; column += 1) plan.push({ row, column, text });
  }
  return plan;
}

/** How often a block is laid along a range: once, unless it fits a whole number of times. */
function repeats(range: number, block: number): number {
  return range % block === 0 ? range / block : 1;
}

function positions(
  { top, left }: Rect,
  size: { readonly rows: number; readonly columns: number },
  extent: Extent,
): readonly Spot[] {
  const rows = Math.min(size.rows, extent.rows - top);
  const columns = Math.min(size.columns, extent.columns - left);
  return Array.from({ length: Math.max(0, rows) }, (_, row) =>
    Array.from({ length: Math.max(0, columns) }, (__, column) => ({ row: top + row, column: left + column })),
  ).flat();
}
