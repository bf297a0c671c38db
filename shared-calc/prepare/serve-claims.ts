import type { Day } from '#shared-calc/calendar/day.ts';
import { mayTakeOn, takeFrom, type TubStock } from './tub-stock.ts';

/** A tub of a board; one that is kept for a job serves that job alone. */
export interface BoardTub {
  readonly id: string;
  readonly stock: TubStock;
  readonly keptFor?: string;
}

/** What the builds of one day ask for. */
export interface Claim {
  readonly date: Day;
  readonly day: number;
  readonly animals: number;
  /** By job; claims without a job are under an empty name. */
  readonly byJob: ReadonlyMap<string, number>;
}

export interface ServedClaim {
  readonly claim: Claim;
  /** Animals that no tub gives. */
  readonly short: number;
  readonly from: readonly { readonly tub: string; readonly animals: number }[];
}

const NOTHING = 1e-9;

/**
 * Claims by date, each from the tubs in their order until it is met; tubs kept for its jobs come first. Floating takes
 * the whole share of a tub even where less is asked, picking takes what is asked.
 */
export function serveClaims(tubs: readonly BoardTub[], claims: readonly Claim[]): readonly ServedClaim[] {
  const shelf = shelfOf(tubs);
  return claims.map((claim) => serve(shelf, claim));
}

/** Whether the tubs meet every claim; it stops at the first that they do not. */
export function areMet(tubs: readonly BoardTub[], claims: readonly Claim[]): boolean {
  const shelf = shelfOf(tubs);
  return claims.every((claim) => !isShort(serve(shelf, claim)));
}

interface Shelf {
  /** Those kept for a job come first. */
  readonly tubs: readonly BoardTub[];
  /** Of each tub after the claims served so far. */
  readonly stocks: TubStock[];
}

function shelfOf(tubs: readonly BoardTub[]): Shelf {
  const inOrder = [
    ...tubs.filter(({ keptFor }) => keptFor !== undefined),
    ...tubs.filter(({ keptFor }) => keptFor === undefined),
  ];
  return { tubs: inOrder, stocks: inOrder.map(({ stock }) => stock) };
}

/** Takes what a claim gets from the shelf. */
function serve({ tubs, stocks }: Shelf, claim: Claim): ServedClaim {
  const open = new Map(claim.byJob);
  let left = sumOf(open);
  const from: { tub: string; animals: number }[] = [];
  for (const [at, { id, keptFor }] of tubs.entries()) {
    const stock = stocks[at];
    if (left <= NOTHING) break;
    const wanted = keptFor === undefined ? left : (open.get(keptFor) ?? 0);
    if (!stock || wanted <= NOTHING) continue;
    const may = mayTakeOn(stock, claim.day);
    const animals = Math.min(wanted, may);
    if (animals <= NOTHING) continue;
    stocks[at] = takeFrom(stock, claim.day, stock.kind.taken === 'floated' ? may : animals);
    give(open, keptFor, animals);
    left = Math.max(0, left - animals);
    from.push({ tub: id, animals });
  }
  return { claim, short: left, from };
}

export function isShort({ short }: Pick<ServedClaim, 'short'>): boolean {
  return short > NOTHING;
}

function sumOf(open: ReadonlyMap<string, number>): number {
  return [...open.values()].reduce((sum, each) => sum + each, 0);
}

/** Meets one job, or the jobs in their order; a job that has all is no longer open. */
function give(open: Map<string, number>, job: string | undefined, animals: number): void {
  let left = animals;
  for (const name of job === undefined ? open.keys() : [job]) {
    if (left <= NOTHING) return;
    const asked = open.get(name) ?? 0;
    const rest = asked - left;
    if (rest > NOTHING) open.set(name, rest);
    else open.delete(name);
    left -= asked;
  }
}
