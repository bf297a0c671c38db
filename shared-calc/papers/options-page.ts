import { calledOf } from '#shared-calc/recipe/column.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { knownSums, type Pricing } from '#shared-calc/bench/order-sums.ts';
import { toCoins } from '#shared-calc/buy/coins.ts';
import type { Guess, Missing } from '#shared-calc/buy/missing.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { careRounds } from '#shared-calc/prepare/care-calendar.ts';
import { planFacts } from '#shared-calc/prepare/plan-facts.ts';
import { freeStore } from '#shared-calc/prepare/plan-store.ts';
import { prepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Records, Workshop } from '#shared-calc/records/records.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { careFigures } from '#shared-calc/prepare/size-care.ts';
import { sizeFigures, type SizeFigures } from '#shared-calc/prepare/size-figures.ts';

/** One of several sizes that a client may choose from, with the same recipe. Unknown figures are left out. */
export interface SizeOption {
  readonly size: string;
  readonly called: string;
  readonly tank: string;
  readonly builds: number;
  /** Including tax, for all builds, as if this size were the whole job. */
  readonly price: string | undefined;
  readonly deposit: string | undefined;
  /** What they wait for: until then they are at least so much. */
  readonly missing: readonly Missing[];
  readonly guesses: readonly Guess[];
  /** Filled, of one build, kg. */
  readonly weightKg: number | undefined;
  /** The earliest handover with the deposit paid today, and what decides it. */
  readonly readyOn: Day | undefined;
  readonly because: string;
  /** Of one build. */
  readonly plants: number | undefined;
  /** Lamps and fan of one build, over a month of 365 / 12 days. */
  readonly kWhPerMonth: number | undefined;
  readonly waterLPerMonth: number | undefined;
  /** The cost of that power, as decimal texts, if the workshop has a price for it. */
  readonly powerCostPerMonth: string | undefined;
  readonly waterCostPerMonth: string | undefined;
  /** Our visits in the first year; the call after a week does not count. */
  readonly careVisits: number | undefined;
  /** Whoever keeps the tank does it: "every 6 weeks". */
  readonly drain: string;
  readonly refill: string;
}

export interface OptionsInput {
  readonly bench: Bench;
  readonly pricing: Pricing;
  readonly records: Records;
  /** Today. */
  readonly on: Day;
}

const MONTH_DAYS = 365 / 12;

/** The options page: a column for each size of a bench. */
export function optionsPage(input: OptionsInput): readonly SizeOption[] {
  const workshop = workshopOf(input.records);
  const display = displayOf(workshop);
  return input.bench.input().columns.map(({ key, label, tank, count }) => {
    const figures = sizeFigures(input.bench, key, display);
    const figure = figures.number;
    return {
      size: key,
      called: calledOf({ key, label }),
      tank: tank.label,
      builds: count,
      ...priceOf(input, key),
      weightKg: rounded(figure('filledMass', 'kg'), 1),
      ...datesOf(input, key),
      plants: figure('plants', 'each'),
      ...runningOf(figure, workshop),
      ...roundsOf(figures, input.on),
    };
  });
}

type Figure = SizeFigures['number'];

type Priced = Pick<SizeOption, 'price' | 'deposit' | 'missing' | 'guesses'>;

function priceOf({ bench, pricing, records }: OptionsInput, column: string): Priced {
  const sums = knownSums(bench, [column], pricing);
  if (!sums.ok) return { price: undefined, deposit: undefined, missing: [], guesses: [] };
  const { missing, guesses } = sums.value;
  const { grossCoins, depositCoins } = sums.value.quote;
  const money = (coins: number) => coinsText(coins, workshopOf(records).coinDecimals);
  return { price: money(grossCoins), deposit: money(depositCoins), missing, guesses };
}

function datesOf(input: OptionsInput, column: string): Pick<SizeOption, 'readyOn' | 'because' | 'careVisits'> {
  const { bench, records, on } = input;
  const facts = planFacts(bench, [column], { records, store: freeStore(records, on), on });
  const plan = facts.ok ? prepPlan(facts.value, { on, calendar: calendarOf(records) }) : facts;
  if (!plan.ok) return { readyOn: undefined, because: '', careVisits: undefined };
  const { handover, because, care } = plan.value;
  return { readyOn: handover, because, careVisits: care.filter(({ act }) => act !== 'call').length };
}

type Running = Pick<SizeOption, 'kWhPerMonth' | 'waterLPerMonth' | 'powerCostPerMonth' | 'waterCostPerMonth'>;

function runningOf(figure: Figure, { electricityPerKwh, waterPerL, coinDecimals }: Workshop): Running {
  const kWh = kWhOf(figure);
  const mist = figure('mist', 'mL/d');
  const litres = mist === undefined ? undefined : (mist / 1000) * MONTH_DAYS;
  const cost = (amount: number | undefined, rate: number | undefined) =>
    amount === undefined || rate === undefined
      ? undefined
      : coinsText(toCoins(amount * rate, coinDecimals), coinDecimals);
  return {
    kWhPerMonth: rounded(kWh, 1),
    waterLPerMonth: rounded(litres, 1),
    powerCostPerMonth: cost(kWh, electricityPerKwh),
    waterCostPerMonth: cost(litres, waterPerL),
  };
}

/** One watt for one hour a day is 0.001 kWh a day; the fan is 2 W, day and night. */
function kWhOf(figure: Figure): number | undefined {
  const [lamps, power, hours] = [figure('lamps', 'each'), figure('lampPower', 'W'), figure('lightHours', 'h/d')];
  if (lamps === undefined || power === undefined || hours === undefined) return undefined;
  const fan = (figure('fanNeed', 'each') ?? 0) * FAN_W * 24;
  return ((lamps * power * hours + fan) / 1000) * MONTH_DAYS;
}

const FAN_W = 2;

function roundsOf(figures: SizeFigures, on: Day): Pick<SizeOption, 'drain' | 'refill'> {
  const rounds = careRounds(on, careFigures(figures));
  const say = (act: string) => rounds.find((round) => round.act === act)?.says ?? '';
  return { drain: say('drain'), refill: say('refill and clean') };
}

function rounded(value: number | undefined, decimals: number): number | undefined {
  return value === undefined ? undefined : Number(cleanNoise(value).toFixed(decimals));
}
