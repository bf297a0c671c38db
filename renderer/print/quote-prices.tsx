import { Table } from '#renderer/kit/table.tsx';
import type { QuoteModel } from '#shared-calc/papers/quote-model.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { quoteTerms } from '#shared-calc/papers/quote-paper.ts';
import { paperMoney } from '#shared-calc/papers/paper-words.ts';
import { Totals, withSums } from './paper-sums.tsx';
import css from './quote-paper.module.css';

interface PricesParts {
  readonly model: QuoteModel;
  readonly display: Display;
}

/** Lines, sums and terms of a quote; the last lines and the sums are never separated. */
export function QuotePrices({ model, display }: PricesParts) {
  return (
    <>
      <Table
        look="paper"
        label="Prices"
        groups={withSums(model.lines)}
        keyOf={(_, at) => at}
        columns={[
          { head: 'Group', names: true, cell: ({ label }) => label },
          { head: 'What it is', cell: ({ what }) => what.replaceAll(/ m2\b/g, '\u00a0m²') },
          { head: 'Tax class', look: css['class'], cell: ({ taxClass }) => taxClass },
          { head: `Price, ${model.currency}`, figure: true, cell: ({ price }) => paperMoney(price, display) },
        ]}
      />
      <Sums model={model} display={display} />
      <Terms model={model} />
    </>
  );
}

function Sums({ model, display }: PricesParts) {
  const money = (text: string) => paperMoney(text, display);
  const taxes = model.tax.map(({ label, share, of, sum }) => {
    const what = `Tax, ${label.toLowerCase()}: ${share.replace(' ', '\u00a0')} of ${money(of)}`;
    return [what, money(sum)] as const;
  });
  return (
    <Totals
      rows={[
        ['Price before tax', money(model.net)],
        ...taxes,
        [`Price, ${model.currency}`, money(model.gross), 'sum'],
        ['Deposit with the order', money(model.deposit)],
        ['At the handover', money(model.atHandover)],
      ]}
    />
  );
}

function Terms({ model }: Pick<PricesParts, 'model'>) {
  return (
    <section class={css['terms']}>
      <h3>Terms, and what is not in this price</h3>
      <ul>
        {quoteTerms(model).map((term) => (
          <li key={term}>{term}</li>
        ))}
      </ul>
      {model.payment !== '' && <p>{model.payment}</p>}
    </section>
  );
}
