import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { unitFor } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { closeDecimals, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { quoteFindings, type QuoteFindings } from './quote-findings.ts';
import { quoteSizes, type QuoteSize } from './quote-sizes.ts';
import { WORK_GROUP } from '#shared-calc/price/quote-rules.ts';
import { saidUnit } from './goods-said.ts';

/** A quote in the client's print: no cost and no margin. Money is a decimal text in the currency. */
export interface QuoteModel extends QuoteFindings {
  readonly number: string;
  readonly revision: string;
  readonly issuedOn: string;
  readonly pricesOn: string;
  /** The last day on which it is valid; empty in a draft, while the workshop has not said how long a quote holds. */
  readonly validUntil: string;
  readonly workshop: string;
  readonly place: string;
  readonly letterhead: readonly string[];
  readonly client: string;
  readonly contact: string;
  readonly title: string;
  readonly site: string;
  readonly sizes: readonly QuoteSize[];
  readonly lines: readonly QuoteModelLine[];
  readonly currency: string;
  readonly net: string;
  readonly tax: readonly {
    readonly label: string;
    readonly share: string;
    readonly of: string;
    readonly sum: string;
  }[];
  readonly gross: string;
  readonly deposit: string;
  readonly atHandover: string;
  /** What the price does not include, and the terms, a paragraph each. */
  readonly terms: readonly string[];
  readonly payment: string;
}

export interface QuoteModelLine {
  readonly group: string;
  readonly label: string;
  readonly what: string;
  readonly taxClass: string;
  readonly price: string;
}

/** The printed quote, from its frozen body alone: nothing is worked out again. */
export function quoteModel(body: QuoteBody): QuoteModel {
  const { workshop, sums, job } = body;
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const { number, revision, issuedOn, pricesOn, validUntil } = body;
  return {
    number,
    revision,
    issuedOn,
    pricesOn,
    validUntil: workshop.quoteValidDays === undefined ? '' : validUntil,
    workshop: workshop.name,
    place: workshop.place,
    letterhead: paragraphs(workshop.letterhead),
    client: job?.client ?? '',
    contact: job?.contact ?? '',
    title: job?.title ?? body.recipe.title,
    site: job?.site ?? '',
    sizes: quoteSizes(body),
    lines: sums.lines.map(({ group, label, priceCoins, taxClass }) => ({
      group,
      label,
      what: whatItIs(body, { group, label }),
      taxClass,
      price: money(priceCoins),
    })),
    currency: workshop.currency,
    net: money(sums.netCoins),
    tax: sums.tax.map(({ label, share, netCoins, coins }) => ({
      label,
      share: `${writeNumber(share * 100, Number.isInteger(share * 100) ? 0 : 1, workshop)} %`,
      of: money(netCoins),
      sum: money(coins),
    })),
    gross: money(sums.grossCoins),
    deposit: money(sums.depositCoins),
    atHandover: money(sums.grossCoins - sums.depositCoins),
    terms: paragraphs(workshop.terms),
    payment: workshop.payment,
    ...quoteFindings(body),
  };
}

function paragraphs(text: string): readonly string[] {
  return text.split('\n').filter((line) => line.trim() !== '');
}

type FrozenNeed = QuoteBody['needs'][number];

/**
 * The content of a quote line in a client's words: the needs of its group, in order. A line written for the job alone
 * has only its name.
 */
function whatItIs(body: QuoteBody, { group, label }: { readonly group: string; readonly label: string }): string {
  if (!body.margins.some((margin) => margin.id === group && margin.label === label)) return '';
  if (group === WORK_GROUP) return 'Survey, quote, build, carrying and handover';
  const needs = body.needs.filter((need) => need.group === group);
  return needs.map((need) => sayNeed(need, body)).join('; ');
}

/** A client reads round amounts, but never that there is none of something. */
const FOR_CLIENT_WITHIN = 0.05;

const decimals: Readonly<Record<string, number>> = { L: 1, g: 0, kg: 1, m: 2, m2: 2, each: 0, km: 0 };

function sayNeed({ used, unit: own, label }: FrozenNeed, { workshop }: QuoteBody): string {
  const display = displayOf(workshop);
  const base = toBase(used, unitOf(own));
  const unit = unitFor(base, own, display);
  const value = unit === own ? used : fromBase(base, unitOf(unit));
  const amount = writeNumber(
    value,
    closeDecimals(value, decimals[unit] ?? (unit === own ? 2 : 1), FOR_CLIENT_WITHIN),
    workshop,
  );
  // The label would repeat the unit: the kilometres of the van.
  if (own === 'km') return `${amount} ${unit}`;
  return unit === 'each' ? `${amount} × ${label}` : `${amount} ${saidUnit(unit)} ${label}`;
}
