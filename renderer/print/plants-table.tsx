import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';

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

/** `2 Fittonia albivenis, 2 Begonia bowerae`; what has to stand in shade says so. */
export function sayOrdered({ species, short }: Pick<PlantOrder, 'species' | 'short'>): string {
  const named = species.map(({ plant, count, shade }) => `${count} ${plant.name}${shade ? ' (plant in shade)' : ''}`);
  return [...named, ...(short > 0 ? [`${short} of a kind still to be chosen`] : [])].join(', ');
}
