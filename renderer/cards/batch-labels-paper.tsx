import { Paper } from '#renderer/print/paper.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import css from './batch-labels.module.css';

export interface BatchLabelsParts {
  /** Lines of each label, the first its name. */
  readonly labels: readonly { readonly id: string; readonly lines: readonly string[] }[];
}

/** Labels of treated batches in two columns, to be cut out. */
export function BatchLabelsPaper({ labels }: BatchLabelsParts) {
  return (
    <Paper label="Batch labels" foot="Batch labels" look="large">
      <h2>Batch labels</h2>
      <div class={css['labels']}>
        {labels.map(({ id, lines: [name = '', ...rest] }) => (
          <section key={id}>
            <h3>
              {name} <span>{id}</span>
            </h3>
            {rest.map((line) => (
              <p key={line}>{sayUnits(line)}</p>
            ))}
          </section>
        ))}
      </div>
    </Paper>
  );
}
