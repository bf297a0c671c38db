import { addDays, byDay, daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import { previousOpen } from '#shared-calc/calendar/work-calendar.ts';
import type { Derived, DerivedJob } from './derived.ts';
import { memo, memos } from '#shared-calc/records/memo.ts';
import { careItems } from './today-care.ts';
import { flyItems, tubItems } from './today-cultures.ts';
import { enquiryItems, nextActItems, quoteItems } from './today-office.ts';
import { houseItems } from './today-house.ts';
import { orderItems } from './today-orders.ts';
import { goodsItems, quarantineItems, stepItems } from './today-plan.ts';
import { seasonItems, storeItems } from './today-store.ts';
import { todaySources, type TodayDraft, type TodayItem, type TodaySource } from './today-item.ts';

type Source<Of> = readonly [source: TodaySource, drafts: (of: Of, derived: Derived) => readonly TodayDraft[]];

/** What follows for one job, from its own records. */
const jobSources: readonly Source<DerivedJob>[] = [
  ['goods', goodsItems],
  ['quarantine', quarantineItems],
  ['steps', stepItems],
  ['enquiry', ({ job }, { display }) => enquiryItems(job, display)],
  ['quote', ({ job }, derived) => quoteItems(job, derived)],
  ['next act', ({ job }, { records }) => nextActItems(job, records)],
  ['house', houseItems],
  ['care', careItems],
];

/** What follows for the workshop, or over all jobs together. */
const workshopSources: readonly Source<Derived>[] = [
  ['orders', orderItems],
  ['tubs', tubItems],
  ['flies', flyItems],
  ['store', storeItems],
  ['season', seasonItems],
];

/** What is to be done, worked on first use; a job again only when what it depends on changed. */
export interface Due {
  readonly ofJob: (id: string) => readonly TodayItem[];
  /** Of all jobs and of the workshop, by day, what decides first. */
  readonly all: () => readonly TodayItem[];
}

/** Remembers what was worked from one derivation to the next of a book; a job anew only where it changed. */
export function openDue(): (derived: Derived) => Due {
  const jobs = memos<readonly TodayItem[]>();
  const whole = memo<readonly TodayItem[]>();
  return (derived) => {
    const { records, calendar } = derived;
    const ofJob = (id: string) => {
      const job = derived.job(id);
      if (!job) return [];
      return jobs(
        id,
        [job, derived.display, records.issuedQuote, records.done, records.order, records.houseChange],
        () => itemsOf(jobSources, job, derived),
      );
    };
    return {
      ofJob,
      all: () => {
        const each = [...records.job.keys()].map(ofJob);
        const { tub, move, done, order, material, supplier } = records;
        const { cultureKind, animalKind, animalBatch, placement } = records;
        const kinds = [cultureKind, animalKind, animalBatch, placement];
        const on = [
          calendar,
          derived.display,
          derived.prices,
          tub,
          move,
          done,
          order,
          material,
          supplier,
          ...kinds,
          ...each,
        ];
        return whole(on, () => [...each.flat(), ...itemsOf(workshopSources, derived, derived)].toSorted(inOrder));
      },
    };
  };
}

/** What is to be done on the day of a derivation. */
export function dueOf(derived: Derived): readonly TodayItem[] {
  return openDue()(derived).all();
}

function itemsOf<Of>(sources: readonly Source<Of>[], of: Of, derived: Derived): readonly TodayItem[] {
  return sources.flatMap(([source, drafts]) => drafts(of, derived).map((draft) => itemOf(draft, source, derived)));
}

function itemOf(
  { anyDay, decides = false, ...draft }: TodayDraft,
  source: TodaySource,
  { records, calendar, today }: Derived,
): TodayItem {
  const day = anyDay ? draft.day : previousOpen(draft.day, calendar);
  const client = records.job.get(draft.job ?? '')?.client;
  const named = client === undefined || client === '' ? {} : { client };
  return { ...draft, ...named, source, day, late: Math.max(0, daysBetween(day, today)), decides };
}

function inOrder(one: TodayItem, other: TodayItem): number {
  return (
    byDay<TodayItem>(({ day }) => day)(one, other) ||
    Number(other.decides) - Number(one.decides) ||
    todaySources.indexOf(one.source) - todaySources.indexOf(other.source)
  );
}

/** Items up to so many days after a day; with 0 days those of the day itself and the overdue ones. */
export function dueWithin(items: readonly TodayItem[], on: Day, days: number): readonly TodayItem[] {
  const last = addDays(on, days);
  return items.filter(({ day }) => day <= last);
}
