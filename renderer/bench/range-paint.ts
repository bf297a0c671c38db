import type { LiveCell } from './live-cells.ts';
import type { Positions } from './bench-positions.ts';
import { rowKey } from './bench-positions.ts';
import { holds, isSingle, rectOf } from './range.ts';
import type { Range, Spot } from './range.ts';

/** Marks one drawn cell: in the range, on the chosen line, the chosen box. */
export function paintRange({ cell, row, column }: LiveCell, range: Range | undefined, positions: Positions): void {
  const spot = positions.spotOf(rowKey(row), column);
  const marks = spot && range ? marksOf(spot, range) : nowhere;
  cell.classList.toggle('in-range', marks.inside && marks.many);
  cell.classList.toggle('chosen', marks.tip && column !== undefined);
  cell.classList.toggle('here', marks.line && row.kind === 'line');
  const selected = String(marks.inside);
  if (cell.ariaSelected !== selected) cell.ariaSelected = selected;
}

const nowhere = { inside: false, many: false, tip: false, line: false };

function marksOf(spot: Spot, range: Range): typeof nowhere {
  const line = range.tip.row === spot.row;
  return {
    inside: holds(rectOf(range), spot),
    many: !isSingle(range),
    tip: line && range.tip.column === spot.column,
    line,
  };
}
