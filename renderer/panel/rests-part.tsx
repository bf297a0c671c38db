import { Sign } from '#renderer/frame/sign.tsx';
import { Button } from '#renderer/kit/button.tsx';
import { fromWords } from '#shared-calc/bench/source-words.ts';
import { From } from '#renderer/kit/from.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { PanelActs, PanelView } from './panel-view.ts';
import css from './working-panel.module.css';

interface RestsParts {
  readonly rests: PanelView['rests'];
  readonly stepDown: PanelActs['stepDown'];
}

/** Figures under a worked one that nobody can look up. */
export function RestsPart({ rests, stepDown }: RestsParts) {
  return (
    <section>
      <h3>Rests on</h3>
      <Table
        class={css['rests']}
        label="Figures from memory or without a source"
        rows={rests.rows}
        keyOf={({ line }) => line}
        columns={[
          {
            names: true,
            cell: ({ line, label }) => (
              <Button look="plain" onClick={() => stepDown(line)}>
                {label}
                <Sign name="step" />
              </Button>
            ),
          },
          { cell: ({ from }) => <From of={from === 'memory' ? { source: from } : {}}>{fromWords(from)}</From> },
        ]}
      />
      {rests.more > 0 && <MutedLine>and {rests.more} more</MutedLine>}
    </section>
  );
}
