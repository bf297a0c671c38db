import { actNames } from '#shared-calc/words/act-names.ts';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import { BatchForm } from './batch-form.tsx';
import { OpenBatch } from './open-batch.tsx';
import type { PartView } from './part-view.ts';
import { writeCards, writePrepare } from '#renderer/frame/prepare-route.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Link } from '#renderer/kit/link.tsx';
import type { TreatmentWish } from './treatment-texts.ts';
import css from './prepare.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

interface BatchesParts {
  readonly view: PartView;
  readonly asked: TreatmentWish | undefined;
  readonly moistened: boolean;
}

/** Treated batches: recorded, labelled, and each with its core log. */
export function Batches({ view, asked, moistened }: BatchesParts) {
  const { context, job, of } = view;
  const batches = [...context.records.treatmentBatch.values()].toSorted((one, other) => (one.id > other.id ? -1 : 1));
  const open = context.records.treatmentBatch.get(of ?? '');
  return (
    <section>
      <h2>Batches</h2>
      <BatchForm view={view} asked={asked} moistened={moistened} />
      {batches.length === 0 ? (
        <EmptyNote>No batch is written down yet.</EmptyNote>
      ) : (
        <>
          <ul class={css['batches']} onKeyDown={walkLinks}>
            {batches.map((batch) => (
              <li key={batch.id}>
                <a
                  href={writePrepare(job?.id, 'leaves', batch.id)}
                  aria-current={batch.id === open?.id ? 'true' : undefined}
                >
                  <b>{batch.id}</b> {batchLabel(batch, context)[0]} <Muted>{paperDay(batch.on, context.display)}</Muted>
                </a>
              </li>
            ))}
          </ul>
          <p>
            <Link href={writeCards(job?.id, 'labels')}>{actNames.onPaper}: all labels</Link>
          </p>
        </>
      )}
      {open && <OpenBatch key={open.id} view={view} batch={open} />}
    </section>
  );
}
