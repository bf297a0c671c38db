import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { TreatmentBatch } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { PaperDocument } from './document.ts';
import type { MadePaper, PaperFault, PaperInput } from './paper-input.ts';

type LabelTerms = Pick<Derived, 'records' | 'display'>;

/** The bag label of each treated batch. */
export const labelsPaper = ({ derived }: Pick<PaperInput, 'derived'>): Result<MadePaper, PaperFault> => {
  const batches = [...derived.records.treatmentBatch.values()];
  if (batches.length === 0) return failed({ kind: 'no-batch' });
  return ok({ data: labelsOf(batches, derived), document: labelsDocument(batches, derived) });
};

/** The labels of some batches, to cut out. */
export function labelsDocument(batches: readonly TreatmentBatch[], derived: LabelTerms): PaperDocument {
  const labels = labelsOf(batches, derived);
  return {
    title: 'Labels of treated batches',
    blocks: labels.map(({ id, lines }) => ({ is: 'label', text: id, items: lines })),
  };
}

function labelsOf(batches: readonly TreatmentBatch[], derived: LabelTerms) {
  return batches.map((batch) => ({ id: batch.id, lines: batchLabel(batch, derived) }));
}
