import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { batchesNow, type BatchNow } from '#shared-calc/prepare/animal-quarantine.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { today } from '#electron/service/today.ts';

export const animalsCommand: Command = {
  name: 'animals',
  usage: 'animals [--on DATE]: the batches of animals, how long each stands apart, and where they go',
  options: { ...bookOption, on: 'text' },
  misuse: ({ words: [word] }) => (word === undefined ? undefined : `What is ${word} for?`),
  run: (given) =>
    withBook(given, (book) => {
      const on = readDay(given, 'on');
      return on.ok ? answer(book.records(), on.value ?? today()) : refusal(on.fault);
    }),
};

function answer(records: Records, on: Day): Outcome {
  const batches = batchesNow(records, on);
  return {
    is: 'answer',
    json: batches.map((each) => batchJson(each, records)),
    table: () => batchTable(batches, displayOf(workshopOf(records))),
  };
}

function batchJson({ batch, kind, until, daysLeft, placements, unplaced }: BatchNow, { size }: Records) {
  const { id, count, cameOn, from, joinedOn = null, looks, tests, place, note } = batch;
  return {
    batch: id,
    kind: kind.id,
    label: kind.label,
    count,
    cameOn,
    from,
    joinedOn,
    until,
    daysLeft,
    unplaced,
    placed: placements.map(({ id: placement, size: into, count: many, on, anyway, who = null }) => ({
      placement,
      job: size.get(into)?.job ?? null,
      size: into,
      count: many,
      on,
      anyway: anyway === '' ? null : anyway,
      who,
    })),
    looks,
    tests,
    place,
    note,
  };
}

function batchTable(batches: readonly BatchNow[], { dateOrder }: SaidDays): string {
  if (batches.length === 0) return 'No batch of animals is written down.';
  const rows = batches.map(
    ({ batch: { id, count, cameOn, from, tests }, kind, until, daysLeft, placements, unplaced }) => [
      id,
      kind.label,
      String(count),
      writeDay(cameOn, dateOrder),
      from,
      daysLeft === 0 ? 'over' : `${daysLeft} d, until ${writeDay(until, dateOrder)}`,
      tests.map(({ which, result }) => `${which}: ${result}`).join('; '),
      placements.map(({ size, count: many, on }) => `${many} into ${size} on ${writeDay(on, dateOrder)}`).join('; '),
      String(unplaced),
    ],
  );
  const heads = ['batch', 'kind', 'animals', 'came', 'from', 'quarantine', "vet's tests", 'planned', 'left'];
  return textTable(heads, rows, [2, 8]);
}
