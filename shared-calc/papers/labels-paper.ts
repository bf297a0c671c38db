import { heading, type PaperBlock } from './document.ts';
import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { MadePaper, PaperFault, PaperInput } from './paper-input.ts';

/** The bag label of each treated batch. */
export const labelsPaper = ({ records }: Pick<PaperInput, 'records'>): Result<MadePaper, PaperFault> => {
  const labels = [...records.treatmentBatch.values()].map((batch) => ({
    id: batch.id,
    lines: batchLabel(batch, records),
  }));
  if (labels.length === 0) return failed({ kind: 'no-batch' });
  const blocks = labels.flatMap(({ id, lines }): readonly PaperBlock[] => [heading(id), { is: 'list', items: lines }]);
  return ok({ data: labels, document: { title: 'Labels of treated batches', blocks } });
};
