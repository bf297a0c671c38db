import { Sign } from '#renderer/frame/sign.tsx';
import { Button } from '#renderer/kit/button.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { PutInView, SourceView } from './panel-view.ts';
import { PutIn } from '#renderer/kit/put-in.tsx';
import css from './working-panel.module.css';

interface Working {
  readonly putIn: PutInView | undefined;
  readonly sources: readonly SourceView[];
  readonly stepDown: (name: string) => void;
}

/** The rule with its figures put in, the same in words, and where each figure came from. */
export function WorkingPart({ putIn, sources, stepDown }: Working) {
  if (!putIn && sources.length === 0) return null;
  return (
    <section>
      <h3>Figures put in</h3>
      {putIn && (
        <PutIn>
          {putIn.pieces.map((piece, index) => (piece.strong ? <b key={index}>{piece.text}</b> : piece.text))}
        </PutIn>
      )}
      {putIn && putIn.words !== '' && <p class={css['inWords']}>{putIn.words}</p>}
      {sources.length > 0 && (
        <Table
          class={css['sources']}
          label="Where each figure comes from"
          rows={sources}
          keyOf={({ name }) => name}
          columns={[
            { names: true, cell: (source) => <Source source={source} stepDown={stepDown} /> },
            { figure: true, cell: ({ figure }) => figure },
            { cell: ({ from }) => from },
          ]}
        />
      )}
    </section>
  );
}

function Source({ source, stepDown }: { readonly source: SourceView; readonly stepDown: (name: string) => void }) {
  if (!source.steps) return <>{source.name}</>;
  return (
    <Button look="plain" onClick={() => stepDown(source.name)}>
      {source.name}
      <Sign name="step" />
    </Button>
  );
}
