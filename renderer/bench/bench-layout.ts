import type { ColDef } from 'ag-grid-community';
import type { GridRow } from '#renderer/grid/grid-model.ts';
import type { GridLayout } from '#renderer/grid/grid-table.ts';
import { rowHeight, rowLooks } from './bench-model.ts';
import type { HeadState } from './head-card.tsx';
import { HeadCell } from './head-cell.ts';

/** The names and one column a size, as wide as the room allows, each under its card. */
export function benchLayout(state: HeadState): GridLayout {
  const metrics = () => state.metrics.peek();
  return {
    column: (index, key) => ({
      ...(index === 0 ? { width: metrics().names, pinned: 'left' } : { width: metrics().strip }),
      ...headOf(state, index === 0 ? undefined : key),
      cellClass: index === 0 ? 'named' : 'box',
    }),
    headHeight: () => metrics().head + metrics().plank,
    rowHeight: (row) => rowHeight(row, metrics()),
    isNarrow: () => metrics().narrow,
    headFocus: true,
    looks: rowLooks,
  };
}

function headOf(state: HeadState, strip: string | undefined): ColDef<GridRow> {
  return {
    headerComponent: HeadCell,
    headerComponentParams: { state, strip },
    suppressHeaderKeyboardEvent: ({ event }) => belongsToCard(event),
  };
}

/** Keys within a card are its fields' own; from the head itself Tab goes into the card. */
function belongsToCard(event: KeyboardEvent): boolean {
  if (!(event.target instanceof Element)) return false;
  return (
    event.target.closest('.card') !== null ||
    (event.key === 'Tab' && !event.shiftKey && event.target.querySelector('.card') !== null)
  );
}
