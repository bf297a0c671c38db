import { Table, type Column, type Group } from '#renderer/kit/table.tsx';
import { groupsIn, type PaperTable } from '#shared-calc/papers/document.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { sayOnPaper } from '#shared-calc/words/say-on-paper.ts';
import { BoxToTick, tickColumn } from './box-to-tick.tsx';
import { CautionList } from './caution-list.tsx';
import { withSums } from './paper-sums.tsx';
import { toWrite, writeTable } from './to-write.ts';
import css from './painted-paper.module.css';

interface TableParts {
  readonly table: PaperTable;
  readonly label: string;
  /** Its last rows stay with the sums that follow. */
  readonly isSummed: boolean;
}

type Row = readonly string[];

export function PaintedTable({ table, label, isSummed }: TableParts) {
  const { rows, head, groups, write = [], boxes = [], main, quiet } = table;
  const isWide = write.length + boxes.length > 0;
  return (
    <Table
      look="paper"
      class={classOf(table)}
      {...(isWide ? { scroll: label } : { label })}
      {...(groups === 'beside' && { beside: capital(head[0] ?? '') })}
      quietHeads={quiet === true}
      groups={groupsOf(table, isSummed)}
      keyOf={(row) => rows.indexOf(row)}
      mark={(row) => (rows.indexOf(row) === main ? 'sum' : undefined)}
      columns={columnsOf(table)}
    />
  );
}

function classOf({ groups, write, cautions, tick }: PaperTable): string | undefined {
  if (groups === 'beside') return css['pick'];
  if (cautions) return css['cautioned'];
  if (write) return writeTable;
  return groups === undefined && !tick ? css['spaced'] : undefined;
}

function groupsOf(table: PaperTable, isSummed: boolean): readonly Group<Row>[] {
  if (table.groups !== undefined) return groupsIn(table).map(([head, rows]) => ({ key: head, head, rows }));
  return isSummed ? withSums(table.rows) : [{ key: 'rows', rows: table.rows }];
}

function columnsOf(table: PaperTable): readonly Column<Row>[] {
  const { head, groups, small = [], tick, write = [], boxes = [] } = table;
  const own = head.map((_, at) => at).filter((at) => !small.includes(at) && (at > 0 || groups === undefined));
  return [
    ...(tick ? [tickColumn] : []),
    ...own.map((at) => columnOf(table, at, at === own.at(-1))),
    ...write.map((title) => toWrite(capital(title))),
    ...boxes.map((title) => ({ head: title, figure: true, cell: () => <BoxToTick /> })),
  ];
}

function columnOf(table: PaperTable, at: number, isLast: boolean): Column<Row> {
  const { rows, head, right = [], small = [], groups, tick, cautions = [] } = table;
  const figure = right.includes(at);
  // A row without a name has an ordinary cell there.
  const isBlank = (row: Row) => !isLast && (row[at] ?? '') === '' && !small.includes(at + 1);
  return {
    head: capital(head[at] ?? ''),
    figure,
    names: at === 0 && !figure && !tick && groups === undefined,
    cell: (row) =>
      isBlank(row) ? (
        ''
      ) : (
        <>
          {sayOnPaper(row[at] ?? '')}
          {small.includes(at + 1) && row[at + 1] !== '' && <small> {sayOnPaper(row[at + 1] ?? '')}</small>}
          {isLast && <CautionList cautions={cautions[rows.indexOf(row)] ?? []} bare />}
        </>
      ),
  };
}
