import { orderSums } from '#shared-calc/bench/order-sums.ts';
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
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** The quote as issued, or as it would be issued today, without a number. */
export function quoteBody(input: PaperInput): Result<QuoteBody, PaperFault> {
  if (input.issued) return ok(input.issued);
  const { records, sheet, bench, pricing, house, wish } = input;
  const sums = orderSums(bench, keysOf(sheet), pricing);
  if (!sums.ok) return failed({ kind: 'order', fault: sums.fault });
  const issue = { number: '', revision: '', issuedOn: wish.on };
  return ok(freezeQuote(records, { sheet, bench, pricing, house }, sums.value, issue));
}

/** A quote for the client: no cost and no margin. */
export const quotePaper: MakePaper = (input) => {
  const body = quoteBody(input);
  if (!body.ok) return body;
  const model = quoteModel(body.value);
  const { sizes, ...rest } = model;
  const plain = sizes.map(({ size, called, tank, shape, inside, kit, count }) => {
    return { size, called, tank, shape, inside, kit, count };
  });
  return ok({
    data: { ...rest, sizes: plain },
    document: quoteDocument(model, displayFor(input)),
    csv: quoteCsv(body.value.sums, body.value.workshop, { inside: false }),
  });
};

/** The quote as the client reads it, in the units and figures of a workshop. */
export function quoteDocument(model: QuoteModel, display: Display): PaperDocument {
  return { title: quoteName(model), blocks: blocksOf(model, display) };
}

/** `Quote Q-0027, revision A`; a draft is marked as not issued. */
function quoteName({ number, revision }: Pick<QuoteModel, 'number' | 'revision'>): string {
  return number === '' ? 'Quote, not issued yet' : `Quote ${number}, revision ${revision}`;
}

/** `Reading room: T05, 600 × 445 × 600 mm inside, full kit; 2 of T07, ...` */
function quoteIntro({ title, sizes }: Pick<QuoteModel, 'title' | 'sizes'>): string {
  const described = sizes.map(({ called, says, kit, count }) => {
    const parts = [count === 1 ? called : `${count} of ${called}`, says, kit && `${kit} kit`];
    return parts.filter((part) => part !== '').join(', ');
  });
  return `${title}: ${described.join('; ')}.`;
}

/** The facts at the top of a quote. */
function quoteFacts(model: QuoteModel, numbers: PaperNumbers): readonly PaperFact[] {
  const money = (text: string) => `${paperMoney(text, numbers)}\u00a0${model.currency}`;
  const issued = model.number !== '';
  return [
    ['For', [model.client, model.contact].filter((each) => each !== '').join(', ')],
    ['Place', model.site],
    [
      issued ? 'Issued' : 'Prices of',
      issued ? `${paperDay(model.issuedOn)}${pricesOf(model)}` : paperDay(model.pricesOn),
    ],
    [issued ? 'Holds until' : 'Would hold until', paperDay(model.validUntil)],
    ['Price', `${money(model.gross)}, tax included`],
    ['Deposit', `${money(model.deposit)} with the order`],
  ];
}

function pricesOf({ issuedOn, pricesOn }: QuoteModel): string {
  return issuedOn === pricesOn ? ', at the prices of that day' : `, at the prices of ${paperDay(pricesOn)}`;
}

/** The terms of a quote, with the replacement of plants last. */
function quoteTerms({ terms, plantsReplacedDays }: QuoteModel): readonly string[] {
  if (plantsReplacedDays === undefined) return terms;
  return [...terms, `Plants that die within ${plantsReplacedDays} days are replaced once.`];
}

function blocksOf(model: QuoteModel, display: Display): readonly PaperBlock[] {
  return [
    paragraph(quoteIntro(model)),
    { is: 'facts', rows: quoteFacts(model, display) },
    { is: 'picture' },
    ...priceBlocks(model, display),
    heading('Terms, and what is not in this price'),
    { is: 'list', items: quoteTerms(model) },
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

function priceBlocks(model: QuoteModel, numbers: PaperNumbers): readonly PaperBlock[] {
  const money = (text: string) => paperMoney(text, numbers);
  return [
    {
      is: 'table',
      head: ['group', 'what it is', 'tax class', `price, ${model.currency}`],
      rows: model.lines.map(({ label, what, taxClass, price }) => [label, what, taxClass, money(price)]),
      right: [3],
    },
    {
      is: 'facts',
      look: 'sums',
      main: `Price, ${model.currency}`,
      rows: [
        ['Price before tax', money(model.net)],
        ...model.tax.map(({ label, share, of, sum }): PaperFact => [
          `Tax, ${label.toLowerCase()}, ${share.replace(' ', '\u00a0')} of ${money(of)}`,
          money(sum),
        ]),
        [`Price, ${model.currency}`, money(model.gross)],
        ['Deposit with the order', money(model.deposit)],
        ['At the handover', money(model.atHandover)],
      ],
    },
  ];
}
