import { SectionDrawing } from '#renderer/drawing/section-drawing.tsx';
import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import type { QuoteSize } from '#shared-calc/papers/quote-sizes.ts';
import { drawingScale } from './drawing-scale.ts';
import { frozenSection } from './frozen-section.ts';
import css from './size-drawings.module.css';

interface DrawingsParts {
  readonly sizes: readonly QuoteSize[];
}

/** The sections of a quote's sizes, all to one scale. */
export function SizeDrawings({ sizes }: DrawingsParts) {
  return <DrawnSizes sizes={sizes.map((each) => ({ ...each, figures: frozenSection(each) }))} />;
}

export interface DrawnSize {
  readonly size: string;
  readonly called: string;
  readonly figures: SectionFigures;
}

/** Section drawings in a row, side on, front at the left; an unmeasured size is left out. */
export function DrawnSizes({ sizes }: { readonly sizes: readonly DrawnSize[] }) {
  const drawn = sizes.filter(({ figures }) => (figures.overallDepth ?? 0) > 0 && (figures.insideHeight ?? 0) > 0);
  if (drawn.length === 0) return null;
  const { scale, labels } = drawingScale(drawn.map(({ figures }) => figures));
  return (
    <figure class={css['drawings']}>
      <div class={css['row']}>
        {drawn.map(({ size, called, figures }) => (
          <div key={size} class={labels ? css['labelled'] : undefined}>
            <SectionDrawing figures={figures} scale={scale} of={`Tank ${called}`} labels={labels} onPaper />
            <p>{called}</p>
          </div>
        ))}
      </div>
      <figcaption>
        Side on, front at left, {drawn.length > 1 ? 'all to one scale' : 'drawn to scale'}. Depths in{' '}
        {drawn[0]?.figures.inches ? 'inches' : 'mm'}.
      </figcaption>
    </figure>
  );
}
