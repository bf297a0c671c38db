import type { OrderRow, SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
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

const WITH_SUMS = 3;

/** An order to one supplier, as it is sent. */
export function OrderPaper({ order, jobs, on, letterhead, display }: OrderPaperParts) {
  const split = Math.max(0, order.rows.length - WITH_SUMS);
  const rows = (some: readonly OrderRow[]) => some.map((row) => <Row key={row.material} row={row} display={display} />);
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
      <table class="paper-lines">
        <thead>
          <tr>
            <th scope="col">Material</th>
            <th scope="col">Please send</th>
            <th scope="col" class="money">
              {display.currency}
            </th>
          </tr>
        </thead>
        {split > 0 && <tbody>{rows(order.rows.slice(0, split))}</tbody>}
        <tbody class="together">{rows(order.rows.slice(split))}</tbody>
      </table>
      <OrderTotals order={order} display={display} />
    </Paper>
  );
}

function Row({ row, display }: { readonly row: OrderRow; readonly display: Display }) {
  return (
    <tr>
      <th scope="row">{row.label}</th>
      <td>
        {row.what.map((what) => (
          <div key={what}>{what}</div>
        ))}
      </td>
      <td class="money">{paperMoney(row.cost, display)}</td>
    </tr>
  );
}

function OrderTotals({ order, display }: Pick<OrderPaperParts, 'order' | 'display'>) {
  const money = (text: string) => paperMoney(text, display);
  return (
    <table class="totals">
      <tbody>
        <tr>
          <th scope="row">Goods</th>
          <td>{money(order.goods)}</td>
        </tr>
        <tr>
          <th scope="row">Carriage</th>
          <td>{money(order.carriage)}</td>
        </tr>
        <tr class="price">
          <th scope="row">Landed, {display.currency}</th>
          <td>{money(order.landed)}</td>
        </tr>
        {order.shortOfMinimum !== '' && (
          <tr class="after">
            <th scope="row">Short of your least order</th>
            <td>{money(order.shortOfMinimum)}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
