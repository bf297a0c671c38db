import type { QuoteModel } from '#shared-calc/papers/quote-model.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { Facts, Letterhead, Paper, SignHere } from './paper.tsx';
import { quoteFacts, quoteIntro, quoteName } from '#shared-calc/papers/quote-paper.ts';
import { QuotePrices } from './quote-prices.tsx';
import { SizeDrawings } from './size-drawings.tsx';
import paper from './paper.module.css';
import css from './quote-paper.module.css';

interface QuotePaperParts {
  readonly model: QuoteModel;
  /** The recipe's lines at the time of the quote, for the drawings. */
  readonly lines: readonly Line[];
  readonly display: Display;
}

/** A quote as the client reads it; one without a number has not been issued yet. */
export function QuotePaper({ model, lines, display }: QuotePaperParts) {
  const name = quoteName(model);
  return (
    <Paper label={name} foot={name}>
      <Letterhead title={name} who={letterheadOf(model)} />
      <section class={model.sizes.length === 1 ? `${css['brief']} ${css['beside']}` : css['brief']}>
        <div>
          <p>{quoteIntro(model)}</p>
          <Facts facts={quoteFacts(model, display)} />
        </div>
        <SizeDrawings sizes={model.sizes} lines={lines} />
      </section>
      <QuotePrices model={model} display={display} />
      <Found model={model} display={display} />
      <Cautions model={model} display={display} />
      <SignHere lines={[`Accepted for ${model.client === '' ? 'the client' : model.client}`, 'Name in full', 'Date']} />
    </Paper>
  );
}

function letterheadOf({ letterhead, workshop, place }: QuoteModel): readonly string[] {
  return letterhead.length > 0 ? letterhead : [workshop, place].filter((line) => line !== '');
}

interface PartProps {
  readonly model: QuoteModel;
  readonly display: Display;
}

function Found({ model: { assumed }, display }: PartProps) {
  if (assumed.length === 0) return null;
  return (
    <section class={css['found']}>
      <h3>Found at the survey, or assumed</h3>
      <ul>
        {assumed.map(({ label, value }) => (
          <li key={label}>
            {label}: {readUnits(value, display)}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Cautions({ model: { sizes, cautions }, display }: PartProps) {
  if (cautions.length === 0) return null;
  const where = (of: readonly string[]) => (of.length === 0 || sizes.length < 2 ? '' : `${of.join(', ')}: `);
  return (
    <section>
      <h3>Cautions, and who decides</h3>
      <dl class={paper['cautions']}>
        {cautions.map(({ says, decides, sizes: of }) => (
          <div key={says}>
            <dt>
              {where(of)}
              {readUnits(says, display).replaceAll(/\u00a0d\b/g, '\u00a0days')}
            </dt>
            <dd>{whoDecides(decides)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
