import type { FigureView } from './panel-view.ts';
import { Muted } from '#renderer/kit/muted.tsx';

/** A figure with its unit, on one line. */
export function Figure({ of: { figure, unit } }: { readonly of: FigureView }) {
  return (
    <>
      {figure}
      {unit !== '' && (
        <>
          {'\u00a0'}
          <Muted>{unit}</Muted>
        </>
      )}
    </>
  );
}
