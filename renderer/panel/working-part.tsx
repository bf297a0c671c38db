import { Sign } from '#renderer/frame/sign.tsx';
import { Button } from '#renderer/kit/button.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { PutInView, SourceView } from './panel-view.ts';
import css from './working-panel.module.css';

interface Working {
  readonly putIn: PutInView | undefined;
  readonly sources: readonly SourceView[];
  readonly stepDown: (name: string) => void;
}

/** How a figure is worked, in words, and where each figure in it came from. */
export function WorkingPart({ putIn, sources, stepDown }: Working) {
  const said = putIn ? wordsOf(putIn) : '';
  if (said === '' && sources.length === 0) return null;
  return (
    <section>
      <h3>How it is worked</h3>
      {said !== '' && <p>{said}</p>}
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

/** The sum in words; figures alone if they say the same, but never the name of a function. */
function wordsOf({ words, pieces }: PutInView): string {
  const figures = pieces.map(({ text }) => text).join('');
  if (words !== '') return words;
  return /[a-z]\(/.test(figures) ? '' : figures;
}

function Source({ source, stepDown }: { readonly source: SourceView; readonly stepDown: (name: string) => void }) {
  if (!source.steps) return <>{source.label}</>;
  return (
    <Button look="plain" onClick={() => stepDown(source.name)}>
      {source.label}
      <Sign name="step" />
    </Button>
  );
}
