import { PaintedPaper } from '#renderer/print/painted-paper.tsx';
import { SizeDrawings } from '#renderer/print/size-drawings.tsx';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import type { QuotePart } from '#shared-calc/papers/quote-part.ts';
import { quoteDocument } from '#shared-calc/papers/quote-paper.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';

interface QuoteParts {
  readonly body: QuoteBody;
  readonly display: Display;
  /** Of a draft: what it lacks. */
  readonly part?: QuotePart;
}

/** A quote as the client reads it; one without a number has not been issued yet. */
export function PaintedQuote({ body, display, part }: QuoteParts) {
  const model = quoteModel(body);
  return (
    <PaintedPaper
      document={quoteDocument(model, display, part)}
      letterhead={letterheadOf(body.workshop)}
      picture={<SizeDrawings sizes={model.sizes} />}
      beside={model.sizes.length === 1}
    />
  );
}
