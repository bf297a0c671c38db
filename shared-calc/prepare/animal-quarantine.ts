import { byDay, addDays, daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import type { AnimalBatch, AnimalKind, Placement, Records } from '#shared-calc/records/records.ts';

/** A batch of animals on a day. */
export interface BatchNow {
  readonly batch: AnimalBatch;
  readonly kind: AnimalKind;
  /** The first day on which they may go in with others. */
  readonly until: Day;
  /** 0 once the quarantine is over. */
  readonly daysLeft: number;
  /** Where animals of it go, in the order of their days. */
  readonly placements: readonly Placement[];
  /** Animals that go nowhere yet. */
  readonly unplaced: number;
}

type Tables = Pick<Records, 'animalBatch' | 'animalKind' | 'placement'>;

/** The quarantine counts from the day that the last animal joined; its days are those of the kind. */
export function quarantineUntil(
  { cameOn, joinedOn }: Pick<AnimalBatch, 'cameOn' | 'joinedOn'>,
  { quarantineDays }: Pick<AnimalKind, 'quarantineDays'>,
): Day {
  return addDays(joinedOn !== undefined && joinedOn > cameOn ? joinedOn : cameOn, quarantineDays);
}

/** A batch of the book as it is on a day. */
export function batchNow(batch: AnimalBatch, { animalKind, placement }: Tables, on: Day): BatchNow {
  const kind = animalKind.get(batch.kind);
  if (!kind) throw new Error(`batch ${batch.id} is of no kind`);
  const placements = [...placement.values()]
    .filter((each) => each.batch === batch.id)
    .toSorted(byDay((each) => each.on));
  const until = quarantineUntil(batch, kind);
  return {
    batch,
    kind,
    until,
    daysLeft: Math.max(0, daysBetween(on, until)),
    placements,
    unplaced: batch.count - placements.reduce((sum, { count }) => sum + count, 0),
  };
}

/** Every batch, of one kind or of all, in the order of the days they came. */
export function batchesNow(records: Tables, on: Day, kind?: string): readonly BatchNow[] {
  return [...records.animalBatch.values()]
    .filter((batch) => kind === undefined || batch.kind === kind)
    .toSorted(byDay(({ cameOn }) => cameOn))
    .map((batch) => batchNow(batch, records, on));
}
