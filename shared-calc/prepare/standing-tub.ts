import { byDay, addDays, daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import type { CultureKind, Move, Records } from '#shared-calc/records/records.ts';
import { isFlies } from './culture-demands.ts';
import { growthRate, type GrowthRate } from './growth-rate.ts';
import { animalsOn, dayNumber, dayOfNumber, mayTakeOn, tubStock, type TubStart, type TubStock } from './tub-stock.ts';

/** A tub that stands, from the book or from a list. */
export interface TubFacts extends TubStart {
  readonly id: string;
  readonly degC?: number | undefined;
  readonly keptFor?: string | undefined;
  readonly spare?: boolean;
  readonly moves?: readonly Pick<Move, 'on' | 'what' | 'amount'>[];
}

export interface StandingTub {
  readonly tub: string;
  readonly startedOn: Day;
  readonly spare: boolean;
  readonly keptFor?: string;
  /** Nothing where its growth is not known. */
  readonly stock?: TubStock;
  /** On the day asked, with what they may be from and to; none where not known, and for flies. */
  readonly animals?: number;
  readonly from?: number;
  readonly to?: number;
  readonly mayTake?: number;
  /** Its first harvest. */
  readonly readyOn: Day;
  /** The next day on which it can be harvested, the day asked or later; none for flies that are used up. */
  readonly nextOn: Day | undefined;
  /** The next day on which it is fed, the day asked or later. */
  readonly feedOn: Day | undefined;
  readonly is: 'growing' | 'ready' | 'used up';
}

interface AskedOn {
  readonly on: Day;
  /** Of tubs without a temperature of their own. */
  readonly degC?: number | undefined;
}

/** A tub on a day, by its own curve since its start, its harvests and counts. */
export function standingOn(tub: TubFacts, kind: CultureKind, { on, degC }: AskedOn): StandingTub {
  const { id, startedOn, keptFor, spare = false } = tub;
  const readyOn = addDays(startedOn, kind.firstHarvestDays);
  const rate = tubGrowth({ ...tub, degC: tub.degC ?? degC }, kind, on);
  const stockAt = (perDay: number) => tubStock(kind, perDay, tub);
  const stock = rate && stockAt(rate.perDay);
  const day = dayNumber(on);
  return {
    tub: id,
    startedOn,
    spare,
    ...(keptFor !== undefined && { keptFor }),
    ...(rate &&
      stock && {
        stock,
        animals: animalsOn(stock, day),
        from: animalsOn(stockAt(rate.from), day),
        to: animalsOn(stockAt(rate.to), day),
        mayTake: mayTakeOn(stock, day),
      }),
    readyOn,
    feedOn: feedOn(startedOn, kind, on),
    ...stageOn(readyOn, kind, { on, stock }),
  };
}

/** Nothing where it is not known; counted on the day itself, a tub is known for that day at whatever temperature. */
export function tubGrowth(
  { degC, moves = [] }: Pick<TubFacts, 'degC' | 'moves'>,
  kind: CultureKind,
  on: Day,
): GrowthRate | undefined {
  const wasCounted = moves.some((move) => move.what === 'counted' && move.on === on);
  return growthRate(kind, degC) ?? (wasCounted ? { perDay: 0, from: 0, to: 0 } : undefined);
}

type Stage = Pick<StandingTub, 'is' | 'nextOn'>;

function stageOn(readyOn: Day, kind: CultureKind, { on, stock }: { on: Day; stock: TubStock | undefined }): Stage {
  if (on < readyOn) return { is: 'growing', nextOn: readyOn };
  if (isFlies(kind)) {
    const over = addDays(readyOn, kind.productiveDays ?? 0);
    return on <= over ? { is: 'ready', nextOn: on } : { is: 'used up', nextOn: undefined };
  }
  return { is: 'ready', nextOn: nextHarvest(stock, kind, on) };
}

/** A floated tub rests a refill time after its last harvest; a picked one gives any day. */
function nextHarvest(stock: TubStock | undefined, { taken, harvestEveryDays }: CultureKind, on: Day): Day {
  const last = stock?.taken.at(-1)?.day;
  if (taken === 'picked' || last === undefined) return on;
  const again = dayOfNumber(last + harvestEveryDays);
  return again > on ? again : on;
}

function feedOn(startedOn: Day, { feedEveryDays }: CultureKind, on: Day): Day | undefined {
  if (feedEveryDays === undefined) return undefined;
  const rounds = Math.max(1, Math.ceil(daysBetween(startedOn, on) / feedEveryDays));
  return addDays(startedOn, rounds * feedEveryDays);
}

/** The tubs of a kind that stand on a day, in order of their start, each with its moves. */
export function tubsOf({ tub, move }: Pick<Records, 'tub' | 'move'>, kind: string, on: Day): readonly TubFacts[] {
  const moves = Map.groupBy(move.values(), ({ lot }) => lot);
  return [...tub.values()]
    .filter((each) => each.kind === kind && (each.endedOn === undefined || each.endedOn > on) && each.startedOn <= on)
    .map(({ id, startedOn, founders, degC, claimedBy: keptFor, spare }) => ({
      id,
      startedOn,
      founders,
      degC,
      keptFor,
      spare,
      moves: (moves.get(id) ?? []).filter((each) => each.on <= on),
    }))
    .toSorted(byDay(({ startedOn }) => startedOn));
}
