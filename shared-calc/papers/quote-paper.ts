import { knownSums } from '#shared-calc/bench/order-sums.ts';
import { cautionSaid } from '#shared-calc/cautions/all-cautions.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import {
  heading,
  paragraph,
  type PaperBlock,
  type PaperCaution,
  type PaperDocument,
  type PaperFact,
} from './document.ts';
import { displayFor, type MakePaper, type PaperFault, type PaperInput } from './paper-input.ts';
import { paperDay, paperMoney, type PaperNumbers } from './paper-words.ts';
import { quoteCsv } from './quote-csv.ts';
import { quoteModel, type QuoteModel } from './quote-model.ts';
import { atLeast, isPart, partData, sayPart, sumLabel, WHOLE, type QuotePart } from './quote-part.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

export interface PrintedQuote {
  readonly body: QuoteBody;
  readonly part: QuotePart;
}

/** The quote as issued, or as it would be issued today as far as it is known, without a number. */
export function printedQuote(input: PaperInput): Result<PrintedQuote, PaperFault> {
  if (input.issued) return ok({ body: input.issued, part: WHOLE });
  const { records, wish } = input;
  const sums = knownSums(input.bench, keysOf(input.sheet), input.pricing);
  if (!sums.ok) return failed({ kind: 'order', fault: sums.fault });
  const issue = { number: '', revision: '', issuedOn: wish.on };
  return ok({ body: freezeQuote(records, input, sums.value, issue), part: sums.value });
}

/** A quote for the client: no cost and no margin. */
export const quotePaper: MakePaper = (input) => {
  const printed = printedQuote(input);
  if (!printed.ok) return printed;
  const { body, part } = printed.value;
  const model = quoteModel(body);
  const { sizes, ...rest } = model;
  const plain = sizes.map(({ size, called, tank, shape, inside, kit, count, builtAs }) => {
    return { size, called, tank, shape, inside, kit, count, ...(builtAs !== undefined && { builtAs }) };
  });
  return ok({
    data: { ...rest, sizes: plain, ...partData(part) },
    document: quoteDocument(model, displayFor(input), part),
    csv: quoteCsv(body.sums, body.workshop, { inside: false, part }),
  });
};

/** The quote as the client reads it, in the units and figures of a workshop; one that is not whole says so first. */
export function quoteDocument(model: QuoteModel, display: Display, part = WHOLE): PaperDocument {
  return { title: quoteName(model, part), blocks: blocksOf(model, display, part) };
}

/** `Quote Q-0027, revision A`; a draft is marked as not issued, or as one that no client may have. */
function quoteName({ number, revision }: Pick<QuoteModel, 'number' | 'revision'>, part: QuotePart): string {
  if (number !== '') return `Quote ${number}, revision ${revision}`;
  const lacks = sayPart(part);
  return lacks === '' ? 'Quote, not issued yet' : `Quote, not to be given: ${lacks}`;
}

/** `Reading room: T05, 600 × 445 × 600 mm inside, full kit; 2 of T07, ...` */
function quoteIntro({ title, sizes }: Pick<QuoteModel, 'title' | 'sizes'>): string {
  const described = sizes.map(({ called, says, kit, count, builtAs = '' }) => {
    const parts = [count === 1 ? called : `${count} of ${called}`, builtAs, says, kit && `${kit} kit`];
    return parts.filter((part) => part !== '').join(', ');
  });
  return `${title}: ${described.join('; ')}.`;
}

/** The facts at the top of a quote. */
function quoteFacts(model: QuoteModel, display: Display, part: QuotePart): readonly PaperFact[] {
  const money = (text: string) => atLeast(`${paperMoney(text, display)}\u00a0${model.currency}`.trimEnd(), part);
  const issued = model.number !== '';
  return [
    ['For', [model.client, model.contact].filter((each) => each !== '').join(', ')],
    ['Place', model.site],
    [
      issued ? 'Issued' : 'Prices of',
      issued ? `${paperDay(model.issuedOn, display)}${pricesOf(model, display)}` : paperDay(model.pricesOn, display),
    ],
    ...(model.validUntil === ''
      ? []
      : [[issued ? 'Holds until' : 'Would hold until', paperDay(model.validUntil, display)] as const]),
    ['Price', `${money(model.gross)}, tax included`],
    ['Deposit', `${money(model.deposit)} with the order`],
  ];
}

function pricesOf({ issuedOn, pricesOn }: QuoteModel, display: Display): string {
  return issuedOn === pricesOn ? ', at the prices of that day' : `, at the prices of ${paperDay(pricesOn, display)}`;
}

/** The terms of a quote, with the replacement of plants last. */
function quoteTerms({ terms, plantsReplacedDays }: QuoteModel): readonly string[] {
  if (plantsReplacedDays === undefined) return terms;
  return [...terms, `Plants that die within ${plantsReplacedDays} days are replaced once.`];
}

/** Only a draft has none. */
function termsBlock(items: readonly string[]): PaperBlock {
  return items.length === 0 ? paragraph('Not given yet.') : { is: 'list', items };
}

function blocksOf(model: QuoteModel, display: Display, part: QuotePart): readonly PaperBlock[] {
  return [
    paragraph(quoteIntro(model)),
    { is: 'facts', rows: quoteFacts(model, display, part) },
    { is: 'picture' },
    ...priceBlocks(model, display, part),
    heading('Terms, and what is not in this price'),
    termsBlock(quoteTerms(model)),
    ...(model.payment === '' ? [] : [paragraph(model.payment)]),
    heading('Found at the survey, or assumed'),
    {
      is: 'list',
      items: model.assumed.map(({ label, value }) => `${label}: ${readUnits(value, display)}`),
      short: true,
    },
    heading('Cautions, and who decides'),
    quoteCautions(model),
    { is: 'sign', items: [`Accepted for ${model.client || 'the client'}`, 'Name in full', 'Date'] },
  ];
}

/** Checks and limits of the place that do not surely hold, then what any client minds. */
export function quoteCautions({ cautions, sizes: all }: Pick<QuoteModel, 'cautions' | 'sizes'>): PaperBlock {
  const where = (of: readonly string[]) => (of.length === 0 || all.length < 2 ? '' : of.join(', '));
  return {
    is: 'cautions',
    rows: cautions.map(({ says, decides, sizes }) => ({ ...inTable(says), about: where(sizes), says, decides })),
    brief: true,
  };
}

/** Which caution of the table a frozen sentence is, if it is one of today's. */
function inTable(says: string): Pick<PaperCaution, 'id' | 'source' | 'at'> {
  const { about: _, decides: __, says: ___, ...named } = cautionSaid(says) ?? {};
  return named;
}

function priceBlocks(model: QuoteModel, numbers: PaperNumbers, part: QuotePart): readonly PaperBlock[] {
  const money = (text: string) => paperMoney(text, numbers);
  const main = sumLabel(`Price, ${model.currency}`, part);
  const rest: readonly PaperFact[] = isPart(part) ? [] : [['At the handover', money(model.atHandover)]];
  return [
    {
      is: 'table',
      head: ['group', 'what it is', 'tax class', sumLabel(`price, ${model.currency}`, part)],
      rows: model.lines.map(({ label, what, taxClass, price }) => [label, what, taxClass, money(price)]),
      right: [3],
    },
    {
      is: 'facts',
      look: 'sums',
      main,
      rows: [
        [sumLabel('Price before tax', part), money(model.net)],
        ...model.tax.map(({ label, share, of, sum }): PaperFact => [
          sumLabel(`Tax, ${label.toLowerCase()}, ${share.replace(' ', '\u00a0')} of ${money(of)}`, part),
          money(sum),
        ]),
        [main, money(model.gross)],
        [sumLabel('Deposit with the order', part), money(model.deposit)],
        ...rest,
      ],
    },
  ];
}
