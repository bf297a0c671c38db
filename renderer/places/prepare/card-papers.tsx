import { documentInUnits } from '#shared-calc/papers/document-in-units.ts';
import type { JSX } from 'preact';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { jobDocument } from '#renderer/print/job-document.ts';
import { PaintedPaper } from '#renderer/print/painted-paper.tsx';
import { isHandedOver, plannedJobs } from '#shared-calc/derive/planned-jobs.ts';
import { areasDocument } from '#shared-calc/papers/areas-paper.ts';
import type { PaperDocument } from '#shared-calc/papers/document.ts';
import { labelsDocument } from '#shared-calc/papers/labels-paper.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import { treatmentDocument } from '#shared-calc/papers/treatment-paper.ts';
import { leavesOf } from '#shared-calc/prepare/leaves-of.ts';
import { careByArea } from '#shared-calc/prepare/size-care.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { CardId } from './card-kinds.ts';
import type { PartView } from './part-view.ts';
import { askTreatment } from './treatment-texts.ts';

/** A card for printing, or why there is none. */
export function cardPaper(view: PartView, card: CardId): JSX.Element {
  const document = documentOf(view, card);
  if (!document.ok) return <EmptyNote>{document.fault}</EmptyNote>;
  return (
    <PaintedPaper
      document={document.value}
      letterhead={letterheadOf(view.context.workshop)}
      look={card === 'handover' ? 'hung' : 'large'}
    />
  );
}

function documentOf(view: PartView, card: CardId): Result<PaperDocument, string> {
  switch (card) {
    case 'treatment':
      return treatmentOf(view);
    case 'labels':
      return labelsOf(view);
    case 'areas':
      return areasOf(view);
    default:
      return jobDocument(view.context, view.job?.id ?? '', card);
  }
}

function treatmentOf({ state, context, job }: PartView): Result<PaperDocument, string> {
  const { workshop } = context;
  const { decimalComma } = workshop;
  const worked = context.job(job?.id ?? '');
  const ofJob = worked && leavesOf(worked.bench);
  const treatment = askTreatment(state.treatment.value, { place: workshop, ofJob, decimalComma });
  if (!treatment.ok) return treatment;
  const { chosen, leavesL, aim } = treatment.value;
  if (!chosen.plan.ok) return chosen.plan;
  return ok(
    documentInUnits(
      treatmentDocument({ way: chosen.way, aim, leavesL, plan: chosen.plan.value }, context),
      context.display,
    ),
  );
}

function labelsOf({ context, one }: PartView): Result<PaperDocument, string> {
  const batches = [...context.records.treatmentBatch.values()].filter(({ id }) => one === undefined || id === one);
  return batches.length === 0 ? failed('No batch is written down yet.') : ok(labelsDocument(batches, context));
}

function areasOf({ context }: PartView): Result<PaperDocument, string> {
  const { planned } = plannedJobs(context, isHandedOver);
  const areas = careByArea(
    planned.map(({ job, plan }) => ({ job, care: plan.care })),
    context.today,
  );
  return areas.length === 0
    ? failed('No tank stands with a client yet.')
    : ok(documentInUnits(areasDocument(areas, context.display), context.display));
}
