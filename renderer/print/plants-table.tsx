import { Table } from '#renderer/kit/table.tsx';
import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { sayOrdered } from '#shared-calc/papers/needs-paper.ts';

/** Plants by name, class by class, each class with its permitted substitutes. */
export function PlantsTable({ plants }: { readonly plants: readonly PlantOrder[] }) {
  if (plants.length === 0) return null;
  return (
    <section>
      <h3>Plants by name</h3>
      <Table
        look="paper"
        label="Plants by name"
        rows={plants}
        keyOf={(order) => order.class}
        columns={[
          { head: 'Class', names: true, cell: (order) => order.class },
          { head: 'Order', cell: sayOrdered },
          { head: 'Or instead', cell: ({ alternates }) => alternates.map(({ name }) => name).join('; ') },
        ]}
      />
    </section>
  );
}
