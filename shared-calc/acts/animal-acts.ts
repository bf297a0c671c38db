import { z } from 'zod';
import { byDay, dayFault, type Day as PlainDay } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { batchNow } from '#shared-calc/prepare/animal-quarantine.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { recordKinds, type AnimalBatch, type Placement } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act, type Act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { Day } from './inputs.ts';
import { nextNumber } from './next-number.ts';
import { readReason, reasonFields, type GivenReason } from './reason.ts';
import { recordAdded, recordChanged, recordRemoved, withFields } from './record-changes.ts';

const { shape } = recordKinds.animalBatch;
const Animals = z.int().min(1).max(9_999);
const Words = z.string().max(2_000);
const OnDay = Day.optional().describe('Left out: today.');

const NewAnimalBatch = z.strictObject({
  kind: z.string(),
  count: Animals,
  cameOn: OnDay,
  from: Words.default('own').describe('own, or who they are from'),
  place: Words.default(''),
  note: Words.default(''),
});

export const newAnimalBatch = act<z.infer<typeof NewAnimalBatch>>({
  name: 'newAnimalBatch',
  says: 'Writes down animals that came together, bred here or bought; their quarantine begins.',
  input: NewAnimalBatch,
  run: ({ records, today }, { cameOn = today, ...asked }) => {
    const fault = dayFault(cameOn);
    if (fault) return failed(fault);
    const kind = findRecord(records, 'animalKind', asked.kind);
    if (!kind.ok) return kind;
    const id = `AB-${nextNumber('AB', records.animalBatch.keys(), 3)}`;
    const batch: AnimalBatch = { ...asked, id, cameOn, looks: [], tests: [] };
    return ok(recordAdded(`batch ${id}: ${sayAnimals(asked.count, kind.value.label)}`, 'animalBatch', batch));
  },
});

/** An act that rewrites one batch of animals on a day. */
function batchAct<I extends { readonly batch: string; readonly on?: PlainDay | undefined }>(parts: {
  readonly name: string;
  readonly says: string;
  readonly input: z.ZodType<I>;
  readonly label: (input: I) => string;
  readonly change: (batch: AnimalBatch, input: I, on: PlainDay) => AnimalBatch;
}): Act<I> {
  const { name, says, input: schema, label, change } = parts;
  return act<I>({
    name,
    says,
    input: schema,
    run: ({ records, today }, input) => {
      const on = input.on ?? today;
      const fault = dayFault(on);
      if (fault) return failed(fault);
      const batch = findRecord(records, 'animalBatch', input.batch);
      if (!batch.ok) return batch;
      return ok(recordChanged(label(input), 'animalBatch', { from: batch.value, to: change(batch.value, input, on) }));
    },
  });
}

const ChangeAnimals = z.strictObject({
  batch: z.string(),
  fields: z
    .strictObject({ count: Animals, cameOn: Day, from: shape.from, place: shape.place, note: shape.note })
    .partial(),
});

export const changeAnimals = act<z.infer<typeof ChangeAnimals>>({
  name: 'changeAnimals',
  says: 'Changes what is written of a batch of animals; fewer than are placed is refused.',
  input: ChangeAnimals,
  run: ({ records, today }, { batch: id, fields }) => {
    const batch = findRecord(records, 'animalBatch', id);
    if (!batch.ok) return batch;
    const fault = fields.cameOn === undefined ? undefined : dayFault(fields.cameOn);
    if (fault) return failed(fault);
    const to = withFields(batch.value, fields);
    const { unplaced } = batchNow(to, records, today);
    if (unplaced < 0) return failed({ kind: 'batch-has-less', batch: id, asked: to.count - unplaced, has: to.count });
    return ok(recordChanged(`batch ${id} changed`, 'animalBatch', { from: batch.value, to }));
  },
});

const JoinAnimals = z.strictObject({ batch: z.string(), count: Animals, on: OnDay });

export const joinAnimals = batchAct<z.infer<typeof JoinAnimals>>({
  name: 'joinAnimals',
  says: 'Puts more animals into a batch: the quarantine of all of them begins again.',
  input: JoinAnimals,
  label: ({ batch, count }) => `${count} joined batch ${batch}`,
  change: (batch, { count }, on) => ({
    ...batch,
    count: batch.count + count,
    joinedOn: batch.joinedOn !== undefined && batch.joinedOn > on ? batch.joinedOn : on,
  }),
});

const LookAtAnimals = z.strictObject({ batch: z.string(), seen: Words.min(1), on: OnDay });

export const lookAtAnimals = batchAct<z.infer<typeof LookAtAnimals>>({
  name: 'lookAtAnimals',
  says: 'Writes down what was seen of a batch of animals on a day.',
  input: LookAtAnimals,
  label: ({ batch }) => `look at batch ${batch}`,
  change: (batch, { seen }, on) => ({
    ...batch,
    looks: [...batch.looks, { on, seen: seen.trim() }].toSorted(byDay((look) => look.on)),
  }),
});

const TestAnimals = z.strictObject({
  batch: z.string(),
  which: z.string().min(1).max(200).describe("The vet's name for it: droppings, swab."),
  result: Words.min(1).describe('What the vet found.'),
  on: OnDay,
});

export const testAnimals = batchAct<z.infer<typeof TestAnimals>>({
  name: 'testAnimals',
  says: 'Writes down a test of a batch of animals and what the vet found.',
  input: TestAnimals,
  label: ({ batch, which }) => `${which.trim()} of batch ${batch}`,
  change: (batch, { which, result }, on) => ({
    ...batch,
    tests: [...batch.tests, { which: which.trim(), on, result: result.trim() }].toSorted(byDay((each) => each.on)),
  }),
});

const PlaceAnimals = z.strictObject({
  batch: z.string(),
  size: z.string().describe('The size by its id: J01-T07.'),
  count: Animals,
  on: Day.optional().describe('The day they go in; left out: today.'),
  ...reasonFields,
});

type Placed = z.infer<typeof PlaceAnimals>;

export const placeAnimals = act<Placed>({
  name: 'placeAnimals',
  says: 'Plans animals of a batch into a size of their kind; in quarantine only with a reason and who decides.',
  input: PlaceAnimals,
  run: (derived, { on = derived.today, ...asked }) => {
    const fault = dayFault(on);
    if (fault) return failed(fault);
    const reason = readReason(derived.records, asked);
    if (!reason.ok) return reason;
    return placed(derived, { ...asked, on, reason: reason.value });
  },
});

type Wanted = Pick<Placement, 'batch' | 'size' | 'count' | 'on'> & { readonly reason: GivenReason | undefined };

function placed({ records, display }: Derived, { reason, ...wanted }: Wanted): Result<Change, ActFault> {
  const { batch: id, size: sizeId, count, on } = wanted;
  const batch = findRecord(records, 'animalBatch', id);
  if (!batch.ok) return batch;
  const size = findRecord(records, 'size', sizeId);
  if (!size.ok) return size;
  const now = batchNow(batch.value, records, on);
  const named = size.value.animalKind;
  if (named !== now.kind.id)
    return failed({ kind: 'animals-of-another-kind', batch: id, size: sizeId, ...(named !== undefined && { named }) });
  if (count > now.unplaced) return failed({ kind: 'batch-has-less', batch: id, asked: count, has: now.unplaced });
  const isEarly = now.daysLeft > 0;
  if (isEarly && !reason)
    return failed({ kind: 'in-quarantine', batch: id, until: now.until, daysLeft: now.daysLeft, on, display });
  const placement: Placement = {
    id: `AP-${nextNumber('AP', records.placement.keys(), 3)}`,
    batch: id,
    size: sizeId,
    count,
    on,
    ...(isEarly && reason ? { anyway: reason.note, who: reason.who } : { anyway: '' }),
  };
  return ok(recordAdded(`${count} of batch ${id} into ${sizeId}`, 'placement', placement));
}

const TakeBackAnimals = z.strictObject({ placement: z.string() });

export const takeBackAnimals = act<z.infer<typeof TakeBackAnimals>>({
  name: 'takeBackAnimals',
  says: 'Takes animals that were planned into a size back into their batch.',
  input: TakeBackAnimals,
  run: ({ records }, { placement: id }) => {
    const placement = findRecord(records, 'placement', id);
    if (!placement.ok) return placement;
    const { batch, size } = placement.value;
    return ok(recordRemoved(`batch ${batch} taken back from ${size}`, 'placement', placement.value));
  },
});

function sayAnimals(count: number, label: string): string {
  return `${count} of ${label}`;
}
