import type { ColDef } from 'ag-grid-community';
import { namesColumn } from '#renderer/bench/grid-columns.ts';
import { boxAt, type BookLayout, type Box } from './book-layout.ts';
import type { BookRow } from './book-table.ts';
import { paintedAs, paintField } from './paint-field.ts';

/** A row as the grid has it: another object each time, so that it looks at every field again. */
export interface GridRow {
  readonly id: string;
}

export interface ColumnParts<Row extends BookRow> {
  readonly layout: () => BookLayout<Row>;
  /** Marks a cell that was just drawn. */
  readonly mark: (cell: HTMLElement, row: string, column: number) => void;
  /** Pixels to one rem. */
  readonly rem: number;
  /** One column, nothing pinned. */
  readonly narrow: boolean;
}

/** The grid's own columns; the first keeps its place where there is room. */
export function bookColumns<Row extends BookRow>(parts: ColumnParts<Row>): ColDef<GridRow>[] {
  return parts.layout().columns.map((column, index) => ({
    colId: columnId(index),
    headerName: column.unit === '' ? column.title : `${column.title}, ${column.unit}`,
    headerClass: column.look,
    width: Math.round(column.width * parts.rem),
    ...(index === 0 && { cellAriaRole: 'rowheader', pinned: parts.narrow ? null : 'left' }),
    cellClass: index === 0 ? 'row-name' : 'box',
    wrapHeaderText: true,
    suppressKeyboardEvent: () => false,
    valueGetter: ({ data }) => {
      const box = boxOf(parts.layout(), data, index);
      return box && paintedAs(box);
    },
    cellRenderer: ({ data, eGridCell }: { readonly data?: GridRow; readonly eGridCell: HTMLElement }) => {
      const box = boxOf(parts.layout(), data, index);
      if (!box) return document.createElement('span');
      parts.mark(eGridCell, box.row.id, index);
      return paintField(box);
    },
  }));
}

/** The first is named as the names of the bench are, which the mouse goes by. */
export function columnId(index: number): string {
  return index === 0 ? namesColumn : `field ${index}`;
}

export function columnIndex(id: string): number {
  return id === namesColumn ? 0 : Number(id.replace(/^field /, ''));
}

function boxOf<Row extends BookRow>(
  layout: BookLayout<Row>,
  data: GridRow | undefined,
  index: number,
): Box<Row> | undefined {
  const row = data ? layout.rows.findIndex(({ id }) => id === data.id) : -1;
  return boxAt(layout, { row, column: index });
}
