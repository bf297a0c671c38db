import { Sign } from '#renderer/frame/sign.tsx';
import { Button } from '#renderer/kit/button.tsx';
import type { PutInView, SourceView } from './panel-view.ts';

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
        <p class="put-in">
          {putIn.pieces.map((piece, index) => (piece.strong ? <b key={index}>{piece.text}</b> : piece.text))}
        </p>
      )}
      {putIn && putIn.words !== '' && <p class="in-words">{putIn.words}</p>}
      {sources.length > 0 && (
        <table class="sources">
          <tbody>
            {sources.map((source) => (
              <Source key={source.name} source={source} stepDown={stepDown} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function Source({ source, stepDown }: { readonly source: SourceView; readonly stepDown: (name: string) => void }) {
  return (
    <tr>
      <th scope="row">
        {source.steps ? (
          <Button look="plain" onClick={() => stepDown(source.name)}>
            {source.name}
            <Sign name="step" />
          </Button>
        ) : (
          source.name
        )}
      </th>
      <td>{source.figure}</td>
      <td>{source.from}</td>
    </tr>
  );
}
