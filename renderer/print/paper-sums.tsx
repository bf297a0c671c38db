import { Table, type Group } from '#renderer/kit/table.tsx';
import css from './paper.module.css';

/** At least this many lines stay with the sums, so that no page begins with only a total. */
const WITH_SUMS = 3;

/** The last lines are never separated from the sums under them. */
export function withSums<Row>(rows: readonly Row[]): readonly Group<Row>[] {
  const split = Math.max(0, rows.length - WITH_SUMS);
  return [
    ...(split > 0 ? [{ key: 'first', rows: rows.slice(0, split) }] : []),
    { key: 'last', look: css['together'], rows: rows.slice(split) },
  ];
}

interface TotalsParts {
  readonly rows: readonly (readonly [what: string, sum: string, mark?: 'sum' | undefined])[];
}

/** Sums under a table; one of them is the amount to pay. */
export function Totals({ rows }: TotalsParts) {
  return (
    <Table
      look="totals"
      label="Sums"
      rows={rows}
      keyOf={([what]) => what}
      mark={([, , mark]) => mark}
      columns={[{ names: true, cell: ([what]) => what }, { cell: ([, sum]) => sum }]}
    />
  );
}
