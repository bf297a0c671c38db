import { Table } from '#renderer/kit/table.tsx';
import type { SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { Totals, withSums } from './paper-sums.tsx';
import { Facts, Letterhead, Paper } from './paper.tsx';
import { paperDay, paperMoney, paperWeekday } from '#shared-calc/papers/paper-words.ts';

export interface OrderPaperParts {
  readonly order: SupplierOrder;
  /** `J01, J02` */
  readonly jobs: string;
  readonly on: string;
  readonly letterhead: readonly string[];
  readonly display: Display;
}

/** An order to one supplier, ready to be sent. */
export function OrderPaper({ order, jobs, on, letterhead, display }: OrderPaperParts) {
  return (
    <Paper label={`Order to ${order.name}`} foot={`Order to ${order.name}, ${on}`}>
      <Letterhead title={`Order to ${order.name}`} who={letterhead} />
      <Facts
        facts={[
          ['Date', paperDay(on)],
          ['For our jobs', jobs],
          ['Expected', order.arrivesOn === undefined ? '' : paperWeekday(order.arrivesOn)],
          ['Order by', order.orderBy === undefined ? '' : paperWeekday(order.orderBy.day)],
        ]}
      />
      <Table
        look="paper"
        label="What is ordered"
        groups={withSums(order.rows)}
        keyOf={({ material }) => material}
        columns={[
          { head: 'Material', names: true, cell: ({ label }) => label },
          { head: 'Please send', cell: ({ what }) => what.map((each) => <div key={each}>{each}</div>) },
          { head: display.currency, figure: true, cell: ({ cost }) => paperMoney(cost, display) },
        ]}
      />
      <OrderTotals order={order} display={display} />
    </Paper>
  );
}

function OrderTotals({ order, display }: Pick<OrderPaperParts, 'order' | 'display'>) {
  const rows = [
    ['Goods', order.goods],
    ['Carriage', order.carriage],
    [`Landed, ${display.currency}`, order.landed, 'sum'],
    ...(order.shortOfMinimum === '' ? [] : [['Short of your least order', order.shortOfMinimum] as const]),
  ] as const;
  return <Totals rows={rows.map(([what, text, mark]) => [what, paperMoney(text, display), mark])} />;
}
