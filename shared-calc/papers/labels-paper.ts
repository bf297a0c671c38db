import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import type { Records, TreatmentBatch } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { PaperDocument } from './document.ts';
import type { MadePaper, PaperFault, PaperInput } from './paper-input.ts';

/** The bag label of each treated batch. */
export const labelsPaper = ({ records }: Pick<PaperInput, 'records'>): Result<MadePaper, PaperFault> => {
  const batches = [...records.treatmentBatch.values()];
  if (batches.length === 0) return failed({ kind: 'no-batch' });
  return ok({ data: labelsOf(batches, records), document: labelsDocument(batches, records) });
};

/** The labels of some batches, to cut out. */
export function labelsDocument(batches: readonly TreatmentBatch[], records: Records): PaperDocument {
  const labels = labelsOf(batches, records);
  return {
    title: 'Labels of treated batches',
    blocks: labels.map(({ id, lines }) => ({ is: 'label', text: id, items: lines })),
  };
}

function labelsOf(batches: readonly TreatmentBatch[], records: Records) {
  return batches.map((batch) => ({ id: batch.id, lines: batchLabel(batch, records) }));
}
