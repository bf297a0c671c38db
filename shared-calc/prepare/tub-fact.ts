import type { Day } from '#shared-calc/calendar/day.ts';
import type { CultureKind, Records } from '#shared-calc/records/records.ts';
import { tubGrowth, tubsOf, type TubFacts } from './standing-tub.ts';
import { dayNumber, dayOfNumber, mayTakeOn, tubStock } from './tub-stock.ts';

/** The tub that gives an order its springtails. */
export interface TubFact {
  readonly id?: string;
  /** Of a tub that was started for it. */
  readonly startedOn?: Day;
  /** The first day on which a standing tub gives what is asked. */
  readonly readyOn?: Day;
  /** It is kept for this job. */
  readonly claimed?: boolean;
}

export interface TubAsked {
  readonly records: Pick<Records, 'tub' | 'move' | 'cultureKind'>;
  readonly on: Day;
  readonly job?: string;
  /** The kind that is started where none stands. */
  readonly kind: CultureKind;
  /** Animals; what a tub gives first counts where it is not known. */
  readonly animals: number | undefined;
}

/** The tub kept for the job, else one that is free; of several the one that gives what is asked soonest. */
export function tubFact({ records, on, job, kind, animals = 0 }: TubAsked): TubFact | undefined {
  const kinds = [...records.cultureKind.values()].filter((each) => each.animals === kind.animals);
  const standing = kinds.flatMap((each) =>
    tubsOf(records, each.id, on).flatMap((tub) => {
      const readyOn = givesOn(tub, each, { on, animals });
      return readyOn === undefined ? [] : [{ id: tub.id, keptFor: tub.keptFor, startedOn: tub.startedOn, readyOn }];
    }),
  );
  const claimed = soonest(standing.filter(({ keptFor }) => job !== undefined && keptFor === job));
  if (claimed) return { ...claimed, claimed: true };
  const free = soonest(standing.filter(({ keptFor }) => keptFor === undefined));
  return free && { id: free.id, readyOn: free.readyOn };
}

interface Standing {
  readonly id: string;
  readonly startedOn: Day;
  readonly readyOn: Day;
}

function soonest(tubs: readonly Standing[]): Standing | undefined {
  const [first] = tubs.toSorted((one, other) => (one.readyOn < other.readyOn ? -1 : 1));
  return first && { id: first.id, startedOn: first.startedOn, readyOn: first.readyOn };
}

/** A tub that does not give it in this time does not give it at all. */
const MOST_DAYS = 400;

function givesOn(
  tub: TubFacts,
  kind: CultureKind,
  { on, animals }: { readonly on: Day; readonly animals: number },
): Day | undefined {
  const growth = tubGrowth(tub, kind, on);
  if (!growth) return undefined;
  const stock = tubStock(kind, growth.perDay, tub);
  const first = Math.max(stock.started + kind.firstHarvestDays, stock.known.day);
  for (let day = first; day <= Math.max(first, dayNumber(on)) + MOST_DAYS; day += 1) {
    const may = mayTakeOn(stock, day);
    if (may > 0 && may >= animals) return dayOfNumber(day);
  }
  return undefined;
}
