import { quoteRules } from '#shared-calc/price/quote-rules.ts';
import { hourCoins } from '#shared-calc/price/hour-coins.ts';
import { textsOf } from '#shared-calc/jobs/job-sheet.ts';
import { readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { byId, partsOf } from '#shared-calc/jobs/rework-quote.ts';
import type { IssuedQuote } from '#shared-calc/records/records.ts';
import type { BenchSource } from './bench-source.ts';
import { pricesOf } from './job-source.ts';

/** The bench an issued quote was worked on, as it stood; `undefined` where its body cannot be read. */
export function quoteSource(quote: IssuedQuote): BenchSource | undefined {
  const body = readQuoteBody(quote.body);
  if (!body) return undefined;
  const { whole, columns, goods, lines, basis, oneOffs } = partsOf(body);
  const prices = { on: body.pricesOn, goods, suppliers: byId(body.suppliers) };
  const rates = { margin: byId(body.margins), taxClass: byId(body.taxClasses) };
  const rules = quoteRules(body.workshop, rates, hourCoins({ rate: byId(body.rates) }));
  return {
    title: body.job?.title ?? `${quote.number} ${quote.revision}`,
    recipe: body.recipe,
    lines,
    columns: columns.map(({ locals: written, ...column }) => ({ ...column, written, locals: textsOf(written) })),
    whole,
    job: textsOf(whole),
    ...pricesOf({ prices, rules, basis, oneOffs }),
    issued: `${quote.number} ${quote.revision}`,
  };
}
