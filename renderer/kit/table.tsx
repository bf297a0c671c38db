import type { ComponentChildren } from 'preact';
import { contextMenuOf, type EntryMenu } from './context-menu.tsx';
import css from './table.module.css';

/** A cell that spans several columns. */
interface Wide {
  readonly span: number;
  readonly says: ComponentChildren;
}

type Content = ComponentChildren | Wide;

export interface Column<Row> {
  /** Absent if the column needs none. */
  readonly head?: ComponentChildren;
  readonly cell: (row: Row, at: number) => Content;
  /** Right-aligned, for figures and counts. */
  readonly figure?: boolean;
  /** This column is the row's heading; a row without a text in it has none. */
  readonly names?: boolean;
  /** A class from the table's owner. */
  readonly look?: string | undefined;
}

export interface Group<Row> {
  readonly key: string;
  readonly head?: ComponentChildren;
  readonly rows: readonly Row[];
  readonly look?: string | undefined;
}

export interface FootRow {
  /** The first cell is the row's heading. */
  readonly cells: readonly Content[];
  /** The row is the total of the others. */
  readonly sum?: boolean;
}

type Rows<Row> =
  | { readonly rows: readonly Row[]; readonly groups?: undefined }
  | { readonly groups: readonly Group<Row>[]; readonly rows?: undefined };

type TableParts<Row> = Rows<Row> & {
  readonly columns: readonly Column<Row>[];
  readonly keyOf: (row: Row, at: number) => string | number;
  readonly caption?: string;
  /** For screen readers, if there is no caption. */
  readonly label?: string;
  readonly foot?: readonly FootRow[];
  /** Shown if there are no rows. */
  readonly empty?: string;
  readonly mark?: (row: Row) => 'here' | 'past' | 'sum' | undefined;
  /** `plain` in panels and dialogs, `ledger` over a page, `paper` and `totals` on paper. */
  readonly look?: 'plain' | 'ledger' | 'paper' | 'totals';
  readonly class?: string | undefined;
  /** The heads are only for screen readers. */
  readonly quietHeads?: boolean;
  /** Group heads are in a column of their own, under this heading. */
  readonly beside?: string;
  /** Label for screen readers of the area that scrolls sideways in a narrow window. */
  readonly scroll?: string;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
  /** What can be done with a row, by the right button, the Menu key or Shift+F10. */
  readonly menu?: (row: Row) => EntryMenu | undefined;
};

/** Rows under heads, in groups or not, and their totals. */
export function Table<Row>(parts: TableParts<Row>) {
  const { caption, label, look = 'plain', scroll, foot = [], columns } = parts;
  const groups = parts.groups ?? [{ key: 'rows', rows: parts.rows }];
  const table = (
    <table class={classes(css[look], parts.class)} aria-label={label} onKeyDown={parts.onKeyDown}>
      {caption !== undefined && <caption>{caption}</caption>}
      <Heads columns={columns} quiet={parts.quietHeads === true} beside={parts.beside} />
      {groups.map((group) => (
        <Body key={group.key} group={group} parts={parts} />
      ))}
      {foot.length > 0 && (
        <tfoot>
          {foot.map(({ cells, sum }, at) => (
            <tr key={at} class={sum ? css['sum'] : undefined}>
              <FootCells columns={columns} cells={cells} />
            </tr>
          ))}
        </tfoot>
      )}
    </table>
  );
  if (scroll === undefined) return table;
  return (
    <div class={css['scroll']} tabIndex={0} role="region" aria-label={scroll}>
      {table}
    </div>
  );
}

interface HeadsParts<Row> {
  readonly columns: readonly Column<Row>[];
  readonly quiet: boolean;
  readonly beside: string | undefined;
}

function Heads<Row>({ columns, quiet, beside }: HeadsParts<Row>) {
  if (columns.every(({ head }) => head === undefined)) return null;
  return (
    <thead class={quiet ? css['quiet'] : undefined}>
      <tr>
        {beside !== undefined && <th scope="col">{beside}</th>}
        {columns.map((column, at) =>
          column.head === undefined || column.head === '' ? (
            <td key={at} class={classOf(column)} />
          ) : (
            <th key={at} scope="col" class={classOf(column)}>
              {column.head}
            </th>
          ),
        )}
      </tr>
    </thead>
  );
}

interface BodyParts<Row> {
  readonly group: Group<Row>;
  readonly parts: TableParts<Row>;
}

function Body<Row>({ group: { head, rows, look }, parts }: BodyParts<Row>) {
  const { columns, keyOf, mark, beside, empty, menu } = parts;
  const isOver = head !== undefined && beside === undefined;
  return (
    <tbody class={look}>
      {isOver && (
        <tr class={css['over']}>
          <th scope="rowgroup" colSpan={columns.length}>
            {head}
          </th>
        </tr>
      )}
      {rows.map((row, at) => (
        <tr key={keyOf(row, at)} class={markClass(mark?.(row))} {...(menu && contextMenuOf(() => menu(row)))}>
          {beside !== undefined && at === 0 && (
            <th scope="rowgroup" rowSpan={rows.length}>
              {head}
            </th>
          )}
          {cellsOf(columns, (column) => column.cell(row, at))}
        </tr>
      ))}
      {rows.length === 0 && empty !== undefined && (
        <tr>
          <td colSpan={columns.length}>{empty}</td>
        </tr>
      )}
    </tbody>
  );
}

function FootCells<Row>({
  columns,
  cells,
}: {
  readonly columns: readonly Column<Row>[];
  readonly cells: readonly Content[];
}) {
  const left = cells.values();
  const named = columns.map((column, at): Column<Row> => ({ ...column, names: at === 0 }));
  return <>{cellsOf(named, () => left.next().value)}</>;
}

/** The cells of a row, each in its column; a wide cell covers the columns after it. */
function cellsOf<Row>(columns: readonly Column<Row>[], contentOf: (column: Column<Row>) => Content) {
  let free = 0;
  return columns.map((column, at) => {
    if (at < free) return null;
    const content = contentOf(column);
    const { span, says } = isWide(content) ? content : { span: 1, says: content };
    free = at + span;
    const width = span > 1 ? { colSpan: span } : {};
    return column.names === true && says !== '' ? (
      <th key={at} scope="row" class={classOf(column)} {...width}>
        {says}
      </th>
    ) : (
      <td key={at} class={classOf(column)} {...width}>
        {says}
      </td>
    );
  });
}

function isWide(content: Content): content is Wide {
  return typeof content === 'object' && content !== null && 'span' in content;
}

function classOf({ figure, look }: Pick<Column<never>, 'figure' | 'look'>): string | undefined {
  return classes(figure === true ? css['figure'] : undefined, look);
}

function markClass(mark: string | undefined): string | undefined {
  return mark === undefined ? undefined : css[mark];
}

function classes(...names: readonly (string | undefined)[]): string | undefined {
  return names.filter((name) => name !== undefined).join(' ') || undefined;
}
