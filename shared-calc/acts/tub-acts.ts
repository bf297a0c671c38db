import { z } from 'zod';
import { dayFault } from '#shared-calc/calendar/day.ts';
import { recordKinds, type Tub } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { findRecord } from './find-record.ts';
import { nextNumber } from './next-number.ts';
import { recordAdded, recordChanged, recordRemoved, withFields } from './record-changes.ts';

const StartTub = z.strictObject({ kind: z.string() });

export const startTub = act<z.infer<typeof StartTub>>({
  name: 'startTub',
  says: 'Starts a tub of a kind of culture today.',
  input: StartTub,
  run: ({ records, today }, { kind: id }) => {
    const kind = findRecord(records, 'cultureKind', id);
    if (!kind.ok) return kind;
    const tub: Tub = {
      id: `T-${nextNumber('T', records.tub.keys(), 2)}`,
      kind: id,
      startedOn: today,
      spare: false,
      place: '',
      note: '',
    };
    return ok(recordAdded(`tub ${tub.id} of ${kind.value.label.toLowerCase()} started`, 'tub', tub));
  },
});

const { shape } = recordKinds.tub;
const ChangeTub = z.strictObject({
  tub: z.string(),
  fields: z
    .strictObject({
      startedOn: shape.startedOn,
      claimedBy: shape.claimedBy.nullable(),
      spare: shape.spare,
      place: shape.place,
      note: shape.note,
    })
    .partial(),
});

export const changeTub = act<z.infer<typeof ChangeTub>>({
  name: 'changeTub',
  says: 'Changes what is written of a tub; null gives it free for whichever job comes.',
  input: ChangeTub,
  run: ({ records }, { tub: id, fields }) => {
    const tub = findRecord(records, 'tub', id);
    if (!tub.ok) return tub;
    const fault = fields.startedOn === undefined ? undefined : dayFault(fields.startedOn);
    if (fault) return failed(fault);
    const to = withFields(tub.value, { ...fields, place: fields.place?.trim() });
    return ok(recordChanged(labelOf(id, fields), 'tub', { from: tub.value, to }));
  },
});

type TubFields = z.infer<typeof ChangeTub>['fields'];

function labelOf(id: string, { claimedBy, spare, startedOn, place }: TubFields): string {
  if (claimedBy === null) return `tub ${id} for whichever job comes`;
  if (claimedBy !== undefined) return `tub ${id} kept for ${claimedBy}`;
  if (spare !== undefined) return `tub ${id} ${spare ? 'is' : 'is no'} spare`;
  if (startedOn !== undefined) return `tub ${id} started on ${startedOn}`;
  return place === undefined ? `note on tub ${id}` : `place of tub ${id}`;
}

const RemoveTub = z.strictObject({ tub: z.string() });

export const removeTub = act<z.infer<typeof RemoveTub>>({
  name: 'removeTub',
  says: 'Takes a tub down.',
  input: RemoveTub,
  run: ({ records }, { tub: id }) => {
    const tub = findRecord(records, 'tub', id);
    return tub.ok ? ok(recordRemoved(`tub ${id} taken down`, 'tub', tub.value)) : tub;
  },
});
