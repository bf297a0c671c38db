import type { FigureView } from './panel-view.ts';

/** A figure with its unit, on one line. */
export function Figure({ of: { figure, unit } }: { readonly of: FigureView }) {
  return (
    <>
      {figure}
      {unit !== '' && (
        <>
          {'\u00a0'}
          <span class="u">{unit}</span>
        </>
      )}
    </>
  );
}
