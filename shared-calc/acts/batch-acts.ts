import { z } from 'zod';
import { dayFault } from '#shared-calc/calendar/day.ts';
import { MOISTENED } from '#shared-calc/prepare/moistened.ts';
import { recordKinds, type TreatmentBatch } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { findRecord } from './find-record.ts';
import { Day } from './inputs.ts';
import { nextNumber } from './next-number.ts';
import { recordAdded, recordChanged, recordRemoved } from './record-changes.ts';

const { shape } = recordKinds.treatmentBatch;
const NewBatch = z.strictObject({
  material: z.string(),
  litres: z.number().min(0.1).max(10_000),
  way: shape.way,
  aim: shape.aim,
  on: Day.optional().describe('Left out: today.'),
  collectedAt: z.string().max(2_000),
  moistened: z.boolean().default(false),
  note: z.string().max(1_000).default(''),
});

export const newBatch = act<z.infer<typeof NewBatch>>({
  name: 'newBatch',
  says: 'Writes down a batch of leaves that was treated; its label comes from it.',
  input: NewBatch,
  run: ({ records, today }, { moistened, note, on = today, ...asked }) => {
    const fault = dayFault(on);
    if (fault) return failed(fault);
    const collectedAt = asked.collectedAt.trim();
    if (collectedAt === '') return failed({ kind: 'no-place-collected' });
    const batch: TreatmentBatch = {
      ...asked,
      id: `TB-${nextNumber('TB', records.treatmentBatch.keys(), 3)}`,
      on,
      collectedAt,
      log: [],
      note: [moistened ? MOISTENED : '', note.trim()].filter((part) => part !== '').join('; '),
    };
    return ok(recordAdded(`batch ${batch.id}: ${batch.litres} L of leaves treated`, 'treatmentBatch', batch));
  },
});

const LogBatch = z.strictObject({ batch: z.string(), log: shape.log });

export const logBatch = act<z.infer<typeof LogBatch>>({
  name: 'logBatch',
  says: 'Keeps the log of a core probe with its batch: minutes from the start, and degC.',
  input: LogBatch,
  run: ({ records }, { batch: id, log }) => {
    const batch = findRecord(records, 'treatmentBatch', id);
    if (!batch.ok) return batch;
    const to = { ...batch.value, log };
    return ok(recordChanged(`core log of batch ${id}`, 'treatmentBatch', { from: batch.value, to }));
  },
});

const RemoveBatch = z.strictObject({ batch: z.string() });

export const removeBatch = act<z.infer<typeof RemoveBatch>>({
  name: 'removeBatch',
  says: 'Takes a batch of leaves out of the book.',
  input: RemoveBatch,
  run: ({ records }, { batch: id }) => {
    const batch = findRecord(records, 'treatmentBatch', id);
    return batch.ok ? ok(recordRemoved(`batch ${id} taken out`, 'treatmentBatch', batch.value)) : batch;
  },
});
