import type { Margin, QuoteLine } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { coinsUpToStep, roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import { depositDue } from '#shared-calc/trade/price/deposit-due.ts';
import { houseNotGiven, marginNotGiven, rateNotGiven, taxNotGiven, type NotGiven } from './not-given.ts';
import type { PriceFault } from './price-fault.ts';
import { MADE_TO_ORDER, PLANTS_GROUP, WORK_GROUP, type QuoteRules } from './quote-rules.ts';
import { quoteTax, type TaxSum } from './quote-tax.ts';
import { hoursCharged } from './work-hours.ts';

export interface QuoteFigures {
  /** Cost of goods by quote group, in coins, on the used or the packs basis. */
  readonly groupCosts: ReadonlyMap<string, number>;
  readonly minutes: number;
  /** Minutes that are paid at another rate than the builder's, by rate. */
  readonly paidAt?: ReadonlyMap<string, number>;
  /** Part of the costs is not known. */
  readonly isPart?: boolean;
  /** Groups that part of it is in. */
  readonly openGroups?: readonly string[];
  /** Lines written for this job alone, priced with their group's margin. */
  readonly oneOffs?: readonly Pick<QuoteLine, 'label' | 'group' | 'costCoins'>[];
}

export interface PricedLine {
  readonly group: string;
  readonly label: string;
  readonly costCoins: number;
  /** The part of the cost from the plant loss and contingency shares. */
  readonly reserveCoins: number;
  readonly margin: number;
  readonly priceCoins: number;
  readonly taxClass: string;
}

export interface QuoteSums {
  /** In the order of the margins, one-off lines after them; lines without a cost are left out. */
  readonly lines: readonly PricedLine[];
  readonly costCoins: number;
  readonly netCoins: number;
  readonly tax: readonly TaxSum[];
  readonly grossCoins: number;
  readonly depositCoins: number;
  readonly hours: number;
  /** Whose hours they are, before they are rounded up; left out where all are the builder's. */
  readonly people?: readonly PersonHours[];
}

/** A quote as far as it is known: what is not given counts as 0, so that each sum is at least what it says. */
export interface KnownQuote {
  readonly sums: QuoteSums;
  readonly missing: readonly NotGiven[];
}

/** Left out of `who`: the builder. */
export interface PersonHours {
  readonly who?: string;
  readonly label: string;
  readonly hours: number;
}

type CostLine = Pick<QuoteLine, 'label' | 'group' | 'costCoins'>;

/**
 * A quote from costs. In this order: cost; plus plant loss (plants only) and contingency as shares of it, to the coin;
 * over (1 - margin), over (1 - warranty), times (1 - discount), rounded once to the coin; the sum before tax up to the
 * price step, the difference on the largest line; tax on each class's sum; deposit. With those house figures at 0 a
 * price is only cost / (1 - margin), rounded. While anything is missing there is no price step: with it no line, and
 * so no tax, would be at least what it says.
 */
export function quoteSums(figures: QuoteFigures, rules: QuoteRules): Result<KnownQuote, PriceFault> {
  const hours = hoursCharged(figures.minutes);
  const costs = costLines(figures, hours, rules);
  const fault = faultOf(costs, rules);
  if (fault) return failed(fault);
  const missing = notGivenFor(figures, costs, rules);
  const isPart = figures.isPart === true || missing.length > 0;
  const lines = toPriceStep(
    costs.flatMap((cost) => {
      const margin = rules.margins.find((each) => each.id === cost.group);
      return margin ? [pricedLine(cost, margin, rules)] : [];
    }),
    isPart ? 0 : rules.priceStepCoins,
  );
  const taxed = quoteTax(lines, rules.taxClasses);
  if (!taxed.ok) return taxed;
  const deposit = depositOf(lines, taxed.value.grossCoins, rules);
  if (!deposit.ok) return deposit;
  const sums = {
    lines,
    costCoins: sum(lines.map((line) => line.costCoins)),
    ...taxed.value,
    depositCoins: deposit.value,
    hours,
    ...peopleOf(figures, rules),
  };
  return ok({ sums, missing });
}

/**
 * Each minute at the rate of whose it is, what is charged over the minutes at the builder's, overhead on every hour
 * charged; rounded once. Somebody whose rate is not given is paid nothing.
 */
function workCoins({ paidAt = new Map() }: QuoteFigures, hours: number, { hour, paid }: QuoteRules): number {
  const over = [...paidAt].map(([who, minutes]) => (minutes / 60) * (paid.get(who)?.overCoins ?? -hour.builderCoins));
  return roundCoins(hours * hour.coins + sum(over));
}

function peopleOf({ minutes, paidAt }: QuoteFigures, { paid }: QuoteRules): Pick<QuoteSums, 'people'> {
  if (!paidAt || paidAt.size === 0) return {};
  const others = [...paidAt].map(([who, its]) => ({ who, label: paid.get(who)?.label ?? who, hours: its / 60 }));
  return { people: [{ label: 'Builder', hours: minutes / 60 - sum(others.map(({ hours }) => hours)) }, ...others] };
}

function costLines(figures: QuoteFigures, hours: number, rules: QuoteRules): readonly CostLine[] {
  const { groupCosts, oneOffs = [] } = figures;
  const work = workCoins(figures, hours, rules);
  const costs = new Map([...groupCosts, [WORK_GROUP, (groupCosts.get(WORK_GROUP) ?? 0) + work] as const]);
  const known = rules.margins.map(({ id, label }) => ({ group: id, label, costCoins: costs.get(id) ?? 0 }));
  const unknown = [...costs]
    .filter(([group]) => !rules.margins.some((margin) => margin.id === group))
    .map(([group, costCoins]) => ({ group, label: group, costCoins }));
  return [...known, ...unknown, ...oneOffs].filter((line) => line.costCoins !== 0);
}

function faultOf(
  costs: readonly CostLine[],
  { margins, warrantyShare = 0, discountShare }: QuoteRules,
): PriceFault | undefined {
  const groups = costs.map((cost) => cost.group);
  const group = groups.find((each) => !margins.some((margin) => margin.id === each));
  if (group !== undefined) return { kind: 'no-margin', group };
  const high = margins.find(({ id, share = 0 }) => share >= 1 && groups.includes(id));
  if (high) return { kind: 'margin-too-high', group: high.id, label: high.label, margin: high.share ?? 1 };
  if (warrantyShare >= 1) return { kind: 'share-too-high', figure: 'warranty', share: warrantyShare };
  return discountShare >= 1 ? { kind: 'share-too-high', figure: 'discount', share: discountShare } : undefined;
}

/** Every figure of the house that these costs ask for and that is not given, once each. */
function notGivenFor(figures: QuoteFigures, costs: readonly CostLine[], rules: QuoteRules): readonly NotGiven[] {
  const open = [...(figures.openGroups ?? []), ...(figures.minutes > 0 ? [WORK_GROUP] : [])];
  const groups = new Set([...costs.map(({ group }) => group), ...open]);
  const margins = rules.margins.filter(({ id }) => groups.has(id));
  const classes = new Set(margins.map(({ taxClass }) => taxClass));
  return [
    ...peopleNotGiven(figures, rules),
    ...margins.filter(({ share }) => share === undefined).map(marginNotGiven),
    ...rules.taxClasses.filter(({ id, share }) => share === undefined && classes.has(id)).map(taxNotGiven),
    ...houseShares
      .filter((key) => rules[key] === undefined && (key !== 'plantLossShare' || groups.has(PLANTS_GROUP)))
      .map(houseNotGiven),
  ];
}

const houseShares = ['depositShare', 'contingencyShare', 'warrantyShare', 'plantLossShare'] as const;

function peopleNotGiven(
  { minutes, paidAt = new Map() }: QuoteFigures,
  { hour, paid }: QuoteRules,
): readonly NotGiven[] {
  const others = [...paidAt.keys()]
    .filter((who) => paid.get(who)?.overCoins === undefined)
    .map((who) => rateNotGiven({ id: who, label: paid.get(who)?.label ?? who }));
  const builders = minutes > 0 ? hour.notGiven : [];
  return [...builders, ...others.filter(({ of }) => !builders.some((each) => each.of === of))];
}

function pricedLine(cost: CostLine, { share = 0, taxClass }: Margin, rules: QuoteRules): PricedLine {
  const { contingencyShare = 0, warrantyShare = 0, plantLossShare = 0 } = rules;
  const loss = cost.group === PLANTS_GROUP ? plantLossShare : 0;
  const reserveCoins = roundCoins(cost.costCoins * loss) + roundCoins(cost.costCoins * contingencyShare);
  const price = (cost.costCoins + reserveCoins) / (1 - share) / (1 - warrantyShare);
  return {
    group: cost.group,
    label: cost.label,
    costCoins: cost.costCoins,
    reserveCoins,
    margin: share,
    priceCoins: roundCoins(price * (1 - rules.discountShare)),
    taxClass,
  };
}

function toPriceStep(lines: readonly PricedLine[], stepCoins: number): readonly PricedLine[] {
  const net = sum(lines.map((line) => line.priceCoins));
  const over = stepCoins > 0 ? coinsUpToStep(net, stepCoins) - net : 0;
  if (over === 0) return lines;
  const largest = Math.max(...lines.map((line) => line.priceCoins));
  const at = lines.findIndex((line) => line.priceCoins === largest);
  return lines.map((line, index) => (index === at ? { ...line, priceCoins: line.priceCoins + over } : line));
}

/** Never more than the price itself, even after rounding up to the step. */
function depositOf(lines: readonly PricedLine[], gross: number, rules: QuoteRules): Result<number, PriceFault> {
  if (gross <= 0) return ok(0);
  const madeToOrder = lines.filter((line) => MADE_TO_ORDER.includes(line.group));
  const due = depositDue({
    gross,
    share: rules.depositShare ?? 0,
    step: rules.depositStepCoins ?? 0,
    floorCost: Math.max(0, sum(madeToOrder.map((line) => line.costCoins))),
  });
  return typeof due === 'number' ? ok(Math.min(due, gross)) : failed({ kind: 'refused', says: due.refused });
}

function sum(coins: readonly number[]): number {
  return coins.reduce((all, each) => all + each, 0);
}
