import { displayOf } from '#shared-calc/records/display-of.ts';
import { knownSums, type KnownSums } from '#shared-calc/bench/order-sums.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { quoteCsv } from '#shared-calc/papers/quote-csv.ts';
import { atLeast, marginIn, missingData, partData, sayEachLack } from '#shared-calc/papers/quote-part.ts';
import { BUILDER } from '#shared-calc/price/hour-coins.ts';
import { sayPeople } from '#shared-calc/price/say-people.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { clientCautions } from '#shared-calc/jobs/freeze-quote.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';
import type { Command } from '#electron/cli/command.ts';
import { againstOrder, issueOrder, type IssueFault } from '#electron/cli/issue-order.ts';
import { orderChecks, orderNotes } from '#electron/cli/order-checks.ts';
import { orderMisuse, orderOptions } from '#electron/cli/order-options.ts';
import { reasonOf, reasonOptions } from '#electron/cli/reason-options.ts';
import { sayAgainst } from '#electron/cli/say-against.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { surveyOf, workOrder, type WorkedOrder } from '#electron/cli/work-order.ts';

/** The quote of an order. Its CSV is the client's; `--inside` adds cost and margin. */
export const quoteCommand: Command = {
  name: 'quote',
  usage:
    'quote --sizes T05 or --job J01 [--basis used|packs] [--prices today] [--issue [--anyway REASON --who R-builder]] [--inside] [--csv]: the quote, and what stands against issuing it; --issue freezes it under its number',
  options: {
    ...orderOptions,
    ...bookOption,
    ...reasonOptions,
    basis: 'text',
    prices: 'text',
    issue: 'flag',
    inside: 'flag',
    csv: 'flag',
    bom: 'flag',
  },
  misuse: orderMisuse,
  run: (given) =>
    withBook(given, (book) => {
      const worked = workOrder(given, book.records());
      if (!worked.ok) return refusal(...worked.fault);
      const { bench, order, pricing, workshop } = worked.value;
      const sums = knownSums(
        bench,
        order.columns.map((column) => column.key),
        pricing,
      );
      if (!sums.ok) return refusal(sayOrderFault(sums.fault));
      const cautions = clientCautions(bench.input().lines, surveyOf(worked.value));
      const against = againstOrder(worked.value);
      const issue = { sums: sums.value, against, reason: reasonOf(given) };
      const issued = given.flag('issue') ? issueOrder(book, worked.value, issue) : undefined;
      if (issued && !issued.ok) return refusedIssue(issued.fault);
      const named = issued && { quote: issued.value.number, revision: issued.value.revision };
      return {
        is: 'answer',
        json: {
          ...quoteJson(sums.value, workshop),
          checks: orderChecks(worked.value),
          ...named,
          against,
          cautions: cautions.map(cautionJson),
        },
        table: () =>
          [
            ...(named ? [`quote ${named.quote} ${named.revision} issued`] : []),
            quoteTable(sums.value, worked.value),
            ...underFigures([], cautions, displayOf(workshop)),
          ].join('\n'),
        csv: () => quoteCsv(sums.value.quote, workshop, { inside: given.flag('inside'), part: sums.value }),
        notices: named ? sayAgainst(against) : [],
      };
    }),
};

/** A quote that lacks anything is not issued: all of it at once. */
function refusedIssue(fault: IssueFault): Outcome {
  const { says, missing } = fault;
  if (!missing) return refusal(says);
  return {
    is: 'refused',
    says: [says],
    json: { fault: { kind: 'figures-not-given', says, missing: missing.map(missingData) } },
  };
}

/** A quote as `--json` gives it. */
function quoteJson({ quote, ...part }: KnownSums, workshop: Workshop): Record<string, unknown> {
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  return {
    lines: quote.lines.map((line) => ({
      group: line.group,
      label: line.label,
      cost: money(line.costCoins),
      margin: marginIn(part, line) ?? null,
      price: money(line.priceCoins),
      taxClass: line.taxClass,
    })),
    cost: money(quote.costCoins),
    net: money(quote.netCoins),
    tax: Object.fromEntries([
      ...quote.tax.map(({ taxClass, coins }) => [taxClass, money(coins)]),
      ...part.missing.flatMap(({ what, of }) => (what === 'tax' ? [[of, null]] : [])),
    ]),
    gross: money(quote.grossCoins),
    deposit: money(quote.depositCoins),
    hours: quote.hours,
    ...partData(part),
    ...(quote.people && {
      people: quote.people.map(({ who = BUILDER, label, hours }) => ({ who, label, hours: cleanNoise(hours) })),
    }),
  };
}

function quoteTable({ quote, ...part }: KnownSums, worked: WorkedOrder): string {
  const { workshop } = worked;
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const sum = (coins: number) => atLeast(money(coins), part);
  const hours = part.hoursKnown ? `${quote.hours}` : `at least ${quote.hours}`;
  const named = sayPeople(quote, workshop);
  const rows = quote.lines.map((line) => {
    const margin = marginIn(part, line);
    const share = margin === undefined ? '' : `${writeNumber(margin * 100, 0)} %`;
    return [line.label, money(line.costCoins), share, money(line.priceCoins), line.taxClass];
  });
  return [
    textTable(['for the builder only', 'cost', 'margin', 'price', 'tax'], rows, [1, 2, 3]),
    ...orderNotes(worked),
    '',
    `before tax ${sum(quote.netCoins)}`,
    ...quote.tax.map(({ taxClass, coins }) => `tax, ${taxClass} ${sum(coins)}`),
    `price ${sum(quote.grossCoins)} ${workshop.currency}, deposit ${sum(quote.depositCoins)}, ${hours} h${named === '' ? '' : `: ${named}`}`,
    ...sayEachLack(part),
  ].join('\n');
}
