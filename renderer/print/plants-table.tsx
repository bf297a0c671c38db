import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { sayOrdered } from '#shared-calc/papers/needs-paper.ts';

/** Plants by name, class by class, each class with what may be sent instead. */
export function PlantsTable({ plants }: { readonly plants: readonly PlantOrder[] }) {
  if (plants.length === 0) return null;
  return (
    <section>
      <h3>Plants by name</h3>
      <table class="paper-lines">
        <thead>
          <tr>
            <th scope="col">Class</th>
            <th scope="col">Order</th>
            <th scope="col">Or instead</th>
          </tr>
        </thead>
        <tbody>
          {plants.map((order) => (
            <tr key={order.class}>
              <th scope="row">{order.class}</th>
              <td>{sayOrdered(order)}</td>
              <td>{order.alternates.map(({ name }) => name).join('; ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
