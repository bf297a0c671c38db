import { NOTHING } from '#shared-calc/buy/ledger.ts';
import type { Take } from '#shared-calc/buy/allot.ts';
import { carriageOf } from '#shared-calc/buy/carriage.ts';
import { classesOf } from '#shared-calc/buy/class-price.ts';
import { chosenRun, type ChosenMaterial } from '#shared-calc/buy/chosen-packs.ts';
import { dueDay } from '#shared-calc/buy/due-day.ts';
import { hasSupplier, isToBuy, noSupplier, type NoSupplier } from '#shared-calc/buy/no-supplier.ts';
import { goodsCoins, type OrderLine } from '#shared-calc/buy/order-standing.ts';
import { unitPriceCoins, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { isInSeason, nextInSeason, type Season } from '#shared-calc/calendar/season.ts';
import { nextOpen } from '#shared-calc/calendar/work-calendar.ts';
import { pricedPlants, type PricedPlant } from '#shared-calc/jobs/choose-plants.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import {
  orderLines,
  type JobPane,
  type LineDraft,
  type Part,
  type SpeciesWanted,
  type ToOrder,
} from '#shared-calc/jobs/order-lines.ts';
import { orderPlants, type PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { packChoices, suppliersByHand } from '#shared-calc/jobs/pack-choices.ts';
import { paneCuts } from '#shared-calc/jobs/pane-cuts.ts';
import type { RunMaterial } from '#shared-calc/buy/shopping-run.ts';
import type { Records, Supplier } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { Derived } from './derived.ts';
import type { JobsRun } from './jobs-run.ts';

/** An order to one supplier that is not placed yet. */
export interface OrderDraft {
  readonly supplier: Supplier;
  readonly lines: readonly OrderLine[];
  /** The quote groups of its goods. */
  readonly groups: readonly string[];
  /** What may be sent instead. */
  readonly note: string;
  readonly goodsCoins: number;
  readonly carriageCoins: number;
}

/** Goods that are not to be had on the day: they are not ordered before their season opens. */
export interface OutOfSeason {
  readonly material: string;
  readonly label: string;
  readonly unit: string;
  readonly short: number;
  readonly season: Season;
  /** The first open day on which it can be ordered. */
  readonly until: Day;
}

/** What placing orders for some jobs would do on a day, and what it would leave out. */
export interface Placement {
  readonly drafts: readonly OrderDraft[];
  readonly noSupplier: readonly NoSupplier[];
  /** To be bought, and on no order: nobody knows its price. */
  readonly noPrice: readonly RunMaterial[];
  readonly outOfSeason: readonly OutOfSeason[];
  /** What the Store and the open orders give to each job, by material. */
  readonly takes: JobsRun['takes'];
  /** Jobs whose deposit is not in. */
  readonly unpaid: readonly string[];
}

/** The orders that a shopping run over jobs comes to on the day of the derivation, with packs chosen by hand. */
export function placementOf(derived: Derived, jobs: readonly string[]): Result<Placement, JobFault> {
  const run = derived.run({ jobs, from: suppliersByHand(derived.records, jobs) });
  if (!run.ok) return run;
  const { records, prices, today: on, calendar } = derived;
  const { materials } = chosenRun(run.value.run, packChoices(records, jobs), prices);
  const toBuy = materials.filter(isToBuy);
  const sent = nextOpen(on, calendar);
  const season = (need: ChosenMaterial) => seasonLeft(need, records, { sent, calendar });
  const drafted = toBuy.filter((need) => hasSupplier(need, prices) && !season(need));
  const lines = drafted.flatMap((need) => jobLines(derived, need, run.value));
  return ok({
    drafts: draftsOf(derived, lines),
    noSupplier: noSupplier(materials, prices),
    noPrice: materials.filter(({ lacks }) => lacks),
    outOfSeason: toBuy.flatMap((need) => season(need) ?? []),
    takes: run.value.takes,
    unpaid: run.value.unpaid,
  });
}

interface SeasonDay extends Pick<Derived, 'calendar'> {
  readonly sent: Day;
}

function seasonLeft(
  { material, label, unit, toBuy: short }: ChosenMaterial,
  records: Pick<Records, 'material'>,
  { sent, calendar }: SeasonDay,
): OutOfSeason | undefined {
  const season = records.material.get(material)?.season;
  if (!season || isInSeason(sent, season)) return undefined;
  return { material, label, unit, short, season, until: nextOpen(nextInSeason(sent, season), calendar) };
}

function jobLines(derived: Derived, need: ChosenMaterial, { takes }: JobsRun): readonly SuppliedLine[] {
  const ofJobs = takes.get(need.material) ?? [];
  const parts = ofJobs.map(({ job, rest }): Part => ({ job, amount: rest })).filter(({ amount }) => amount > NOTHING);
  return suppliedLines(need, derived.prices, {
    parts,
    panes: need.sale === 'cut' ? parts.flatMap(({ job }) => panesOf(derived, job)) : [],
    species: ofJobs.flatMap((take) => speciesOf(derived, need.material, take)),
    alternates: plantsOf(
      derived,
      need.material,
      parts.map(({ job }) => job),
    ).flatMap(({ alternates }) => alternates),
  });
}

/** The plants by name that some jobs are to get of a class; none if the material stands for no class. */
function plantsOf(derived: Derived, material: string, jobs: readonly string[]): readonly PlantOrder[] {
  const { records, prices } = derived;
  const classes = classesOf(records, material);
  if (classes.size === 0) return [];
  const benches = jobs.flatMap((id) => derived.job(id)?.planted ?? []);
  return orderPlants(benches, pricedPlants(records, prices)).filter((each) => classes.has(each.class));
}

/** A line with the supplier that it goes to. */
export type SuppliedLine = LineDraft & {
  readonly supplier: string;
  readonly group?: string;
  /** What may be sent instead, in a sentence. */
  readonly instead?: string;
};

export type LinesFor = Pick<ToOrder, 'parts' | 'panes' | 'species'> & {
  /** Plants that may be sent instead. */
  readonly alternates: readonly Pick<PricedPlant, 'name'>[];
};

/** A material of a run as lines of an order to its supplier. */
export function suppliedLines(need: RunMaterial, prices: PriceBook, wanted: LinesFor): readonly SuppliedLine[] {
  const { material, supplier = '' } = need;
  const goods = prices.offers?.get(material)?.find((each) => each.supplier === supplier) ?? prices.goods.get(material);
  const lines = orderLines({ need, unitCoins: goods ? unitPriceCoins(goods) : 0, ...wanted });
  const names = wanted.alternates.map(({ name }) => name).join('; ');
  const instead = names === '' ? {} : { instead: `${need.label}, or instead: ${names}.` };
  return lines.map((line) => ({ ...line, supplier: line.supplier ?? supplier, group: need.group, ...instead }));
}

function panesOf(derived: Derived, job: string): readonly JobPane[] {
  const worked = derived.job(job);
  return worked ? paneCuts(worked.bench).map((cut) => ({ ...cut, job })) : [];
}

/** Plants by name that a job still lacks: what it has of a kind is taken off that kind, what it has of others off the last. */
function speciesOf(derived: Derived, material: string, take: Take): readonly SpeciesWanted[] {
  const orders = plantsOf(derived, material, [take.job]);
  const has = new Map<string, number>();
  for (const { of, amount } of take.has) has.set(of, (has.get(of) ?? 0) + amount);
  const wanted = orders.flatMap(({ species }) =>
    species.map(({ plant, count, shade }) => {
      const own = Math.min(count, has.get(plant.id) ?? 0);
      has.set(plant.id, (has.get(plant.id) ?? 0) - own);
      return { job: take.job, plant, count: count - own, shade };
    }),
  );
  let others = [...has.values()].reduce((sum, amount) => sum + amount, 0);
  return wanted
    .toReversed()
    .map((each) => {
      const less = Math.min(each.count, others);
      others -= less;
      return { ...each, count: Math.ceil(each.count - less - NOTHING) };
    })
    .toReversed();
}

/** One order for each supplier, in order of first need, each line with the day on which it is due. */
export function draftsOf(
  { records, today: on, calendar }: Pick<Derived, 'records' | 'today' | 'calendar'>,
  lines: readonly SuppliedLine[],
): readonly OrderDraft[] {
  return [...Map.groupBy(lines, ({ supplier }) => supplier)].flatMap(([id, own]) => {
    const supplier = records.supplier.get(id);
    if (!supplier) return [];
    const numbered = own.map((line, at): OrderLine => {
      const due = dueDay(line.of, { supplier, on, calendar }, records);
      return numberedLine(line, at + 1, due);
    });
    const coins = goodsCoins(numbered);
    const groups = [...new Set(own.flatMap(({ group = [] }) => group))];
    const note = [...new Set(own.flatMap(({ instead = [] }) => instead))].join('\n');
    return [{ supplier, lines: numbered, groups, note, goodsCoins: coins, carriageCoins: carriageOf(coins, supplier) }];
  });
}

function numberedLine(
  { of, label, amount, unit, count, askedCoins, cut, ...line }: LineDraft,
  n: number,
  due: Day,
): OrderLine {
  return { n, of, label, amount, unit, count, askedCoins, due, ...(cut && { cut }), for: [...line.for] };
}
