import { z } from 'zod';
import { dayFault, type Day as PlainDay } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { isFlies } from '#shared-calc/prepare/culture-demands.ts';
import { foundersFor } from '#shared-calc/prepare/tub-ways.ts';
import { added, emptyChange, type Change } from '#shared-calc/records/change.ts';
import { recordKinds, type CultureKind, type Tub } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { ActFault } from './act-fault.ts';
import { act } from './act.ts';
import { findRecord } from './find-record.ts';
import { Day } from './inputs.ts';
import { recordChanged, recordsAdded, withFields } from './record-changes.ts';
import { splitFrom } from './tub-moves.ts';

const { shape } = recordKinds.tub;
const Animals = z.int().min(1).max(10_000_000);

const StartTub = z.strictObject({
  kind: z.string(),
  way: shape.way.optional().describe('Left out: split.'),
  founders: Animals.optional().describe('Left out: what the kind is started with that way.'),
  from: z.string().optional().describe('The tub that it is split from: its animals are taken there.'),
  degC: z.number().min(-10).max(60).optional(),
  on: Day.optional().describe('Left out: today.'),
});

export const startTub = act<z.infer<typeof StartTub>>({
  name: 'startTub',
  says: 'Starts a tub of a kind of culture: a split, a new line or one that was bought.',
  input: StartTub,
  run: (derived, { kind: id, way = 'split', from, degC, on = derived.today, ...asked }) => {
    const { records } = derived;
    const kind = findRecord(records, 'cultureKind', id);
    if (!kind.ok) return kind;
    const fault = dayFault(on);
    if (fault) return failed(fault);
    const founders = asked.founders ?? usualFounders(kind.value, way);
    const tub: Tub = {
      id: nextTub(derived),
      kind: id,
      startedOn: on,
      spare: false,
      place: '',
      note: '',
      founders,
      way,
      ...(from !== undefined && { from }),
      ...(degC !== undefined && { degC }),
    };
    const taken = from === undefined ? ok([]) : splitFrom(derived, { from, founders, on, into: tub.id });
    if (!taken.ok) return taken;
    const label = `tub ${tub.id} of ${kind.value.label} started`;
    return ok(recordsAdded(label, [added('tub', tub), ...taken.value.map((move) => added('move', move))]));
  },
});

function usualFounders(kind: CultureKind, way: Tub['way']): number {
  const usual = way === 'new' && !isFlies(kind) ? foundersFor(kind, 'new') : ok(kind.founders);
  return usual.ok ? usual.value : kind.founders;
}

/** K1, K2 ... after the highest there is. */
function nextTub({ records }: Pick<Derived, 'records'>): string {
  const numbers = [...records.tub.keys()].map((id) => Number(/^K(\d{1,9})$/.exec(id)?.[1] ?? 0));
  return `K${Math.max(0, ...numbers) + 1}`;
}

const ChangeTub = z.strictObject({
  tub: z.string(),
  fields: z
    .strictObject({
      startedOn: shape.startedOn,
      claimedBy: shape.claimedBy.nullable(),
      spare: shape.spare,
      place: shape.place,
      note: shape.note,
      founders: Animals,
      way: shape.way,
      degC: shape.degC.nullable(),
      endedOn: shape.endedOn.nullable(),
    })
    .partial(),
});

export const changeTub = act<z.infer<typeof ChangeTub>>({
  name: 'changeTub',
  says: 'Changes what is written of a tub; null gives it free for whichever job comes, or takes a figure away.',
  input: ChangeTub,
  run: ({ records }, { tub: id, fields }) => {
    const tub = findRecord(records, 'tub', id);
    if (!tub.ok) return tub;
    const fault = [fields.startedOn, fields.endedOn].map(faultOfDay).find((each) => each !== undefined);
    if (fault) return failed(fault);
    const to = withFields(tub.value, { ...fields, place: fields.place?.trim() });
    return ok(recordChanged(labelOf(id, fields), 'tub', { from: tub.value, to }));
  },
});

function faultOfDay(day: PlainDay | null | undefined) {
  return typeof day === 'string' ? dayFault(day) : undefined;
}

type TubFields = z.infer<typeof ChangeTub>['fields'];

function labelOf(id: string, { claimedBy, spare, startedOn, ...others }: TubFields): string {
  if (claimedBy === null) return `tub ${id} for whichever job comes`;
  if (claimedBy !== undefined) return `tub ${id} kept for ${claimedBy}`;
  if (spare !== undefined) return `tub ${id} ${spare ? 'is' : 'is no'} spare`;
  if (startedOn !== undefined) return `tub ${id} started on ${startedOn}`;
  const [key] = Object.keys(others);
  return `${key === undefined ? 'note' : words[key as keyof typeof words]} of tub ${id}`;
}

const words = {
  place: 'place',
  note: 'note',
  founders: 'starter animals',
  way: 'start',
  degC: 'temperature',
  endedOn: 'end',
} as const;

const EndTub = z.strictObject({ tub: z.string(), on: Day.optional().describe('Left out: today.') });

export const endTub = act<z.infer<typeof EndTub>>({
  name: 'endTub',
  says: 'Ends a tub on a day: what was taken from it stays in the book.',
  input: EndTub,
  run: ({ records, today }, { tub: id, on = today }) => {
    const tub = findRecord(records, 'tub', id);
    if (!tub.ok) return tub;
    const fault = dayFault(on);
    if (fault) return failed(fault);
    return ok(recordChanged(`tub ${id} ended`, 'tub', { from: tub.value, to: { ...tub.value, endedOn: on } }));
  },
});

const RemoveTub = z.strictObject({ tub: z.string() });

export const removeTub = act<z.infer<typeof RemoveTub>>({
  name: 'removeTub',
  says: 'Takes a tub out of the book, with what was taken from it.',
  input: RemoveTub,
  run: ({ records }, { tub: id }): Result<Change, ActFault> => {
    const tub = findRecord(records, 'tub', id);
    if (!tub.ok) return tub;
    const moves = [...records.move.values()].filter(({ lot }) => lot === id).map((move) => added('move', move));
    return ok({ ...emptyChange(`tub ${id} taken down`), removed: [added('tub', tub.value), ...moves] });
  },
});
