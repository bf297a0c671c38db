import type { JSX } from 'preact';
import { AnimalsInPaper } from '#renderer/cards/animals-in-paper.tsx';
import { AreaRoundsPaper } from '#renderer/cards/area-rounds-paper.tsx';
import { BatchLabelsPaper } from '#renderer/cards/batch-labels-paper.tsx';
import { BuildCardPaper } from '#renderer/cards/build-card-paper.tsx';
import { CareCalendarPaper } from '#renderer/cards/care-calendar-paper.tsx';
import { HandoverCardPaper } from '#renderer/cards/handover-card-paper.tsx';
import { PrepPlanPaper } from '#renderer/cards/prep-plan-paper.tsx';
import { SurveyCardPaper } from '#renderer/cards/survey-card-paper.tsx';
import { TreatmentPaper } from '#renderer/cards/treatment-paper.tsx';
import { WatchCardPaper } from '#renderer/cards/watch-card-paper.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { crushesPlants } from '#shared-calc/jobs/crushes-plants.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { buildCards } from '#shared-calc/papers/build-card.ts';
import { careByArea } from '#shared-calc/prepare/size-care.ts';
import { handoverCards } from '#shared-calc/papers/handover-card.ts';
import { prepRows } from '#shared-calc/papers/prep-card.ts';
import { surveyCard } from '#shared-calc/papers/survey-card.ts';
import { treatmentCard } from '#shared-calc/papers/treatment-card.ts';
import { wayWords } from '#shared-calc/papers/treatment-paper.ts';
import { animalsInCard, watchCards } from '#shared-calc/papers/watch-card.ts';
import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import { sayPlan } from '#shared-calc/prepare/say-plan.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { cardKinds, type CardId } from './card-kinds.ts';
import { leavesOf } from '#shared-calc/prepare/leaves-of.ts';
import { sayNoPlan } from '#shared-calc/words/say-plan-fault.ts';
import type { JobPlan } from '#shared-calc/derive/job-plan.ts';
import { isHandedOver, plannedJobs } from '#shared-calc/derive/planned-jobs.ts';
import type { PartView } from './part-view.ts';
import { askTreatment } from './treatment-texts.ts';

export function isCard(id: string | undefined): id is CardId {
  return cardKinds.some((card) => card.id === id);
}

/** A card for printing, or why there is none. */
export function cardPaper(view: PartView, card: CardId): JSX.Element {
  const { job } = view;
  if (card === 'treatment') return treatmentPaper(view);
  if (card === 'labels') return labelsPaper(view);
  if (card === 'areas') return areasPaper(view);
  return job ? ofJob[card](view, job) : <EmptyNote>Open a job first.</EmptyNote>;
}

type OfJob = (view: PartView, job: Job) => JSX.Element;

const ofJob: Readonly<Record<Exclude<CardId, 'treatment' | 'labels' | 'areas'>, OfJob>> = {
  survey: (view, job) => <SurveyCardPaper {...headOf(view, job)} card={surveyCard(job)} />,
  prep: (view, job) =>
    withPlan(view, job, ({ plan }) => (
      <PrepPlanPaper
        {...headOf(view, job)}
        says={sayPlan(plan, job.title || 'the tank', view.context.today)}
        rows={prepRows(plan)}
      />
    )),
  build: (view, job) => {
    const { records, display } = view.context;
    const terms = { records, display, audience: job.audience, animalCrushes: crushesPlants(job.animals) };
    return withBench(view, job, (bench) => <BuildCardPaper {...headOf(view, job)} cards={buildCards(bench, terms)} />);
  },
  watch: (view, job) =>
    withBench(view, job, (bench) => (
      <WatchCardPaper {...headOf(view, job)} cards={watchCards(bench, view.context.display)} />
    )),
  'animals-in': (view, job) =>
    withPlan(view, job, ({ plan: { build }, facts: { settleIn: settleInDays } }) => (
      <AnimalsInPaper {...headOf(view, job)} card={animalsInCard({ build, settleInDays, job })} />
    )),
  handover: (view, job) =>
    withPlan(view, job, ({ plan: { handover, care } }) => {
      const { workshop, display } = view.context;
      const terms = { job, handover, care, workshop, display };
      return withBench(view, job, (bench) => (
        <HandoverCardPaper {...headOf(view, job)} cards={handoverCards(bench, terms)} />
      ));
    }),
  care: (view, job) =>
    withPlan(view, job, ({ plan, care, lamps }) => (
      <CareCalendarPaper
        {...headOf(view, job)}
        handover={plan.handover}
        visits={plan.care}
        sizes={care}
        lamps={lamps}
      />
    )),
};

function headOf({ context }: PartView, job: Job) {
  return { title: jobName(job), letterhead: letterheadOf(context.workshop) };
}

function withPlan({ context }: PartView, job: Job, make: (plan: JobPlan) => JSX.Element): JSX.Element {
  const worked = context.job(job.id);
  const plan = worked?.plan();
  if (!worked || !plan) return <EmptyNote>Open a job first.</EmptyNote>;
  if (plan.ok) return make(plan.value);
  return <EmptyNote>{sayNoPlan(worked, plan.fault)}</EmptyNote>;
}

function withBench({ context }: PartView, job: Job, make: (bench: Bench) => JSX.Element): JSX.Element {
  const worked = context.job(job.id);
  if (worked && worked.keys.length > 0) return make(worked.bench);
  return <EmptyNote>{job.id} has no size yet: take one first.</EmptyNote>;
}

function treatmentPaper({ state, context, job }: PartView): JSX.Element {
  const { workshop } = context;
  const { decimalComma, altitudeM } = workshop;
  const worked = context.job(job?.id ?? '');
  const ofJobL = worked && leavesOf(worked.bench);
  const asked = askTreatment(state.treatment.value, { place: workshop, ofJob: ofJobL, decimalComma });
  if (!asked.ok) return <EmptyNote>{asked.fault}</EmptyNote>;
  const { chosen, leavesL, aim } = asked.value;
  if (!chosen.plan.ok) return <EmptyNote>{chosen.plan.fault}</EmptyNote>;
  const plan = chosen.plan.value;
  return (
    <TreatmentPaper
      letterhead={letterheadOf(workshop)}
      what={`${writeNumber(leavesL, 2, { decimalComma })} L of leaves, ${wayWords[chosen.way]}, aim ${aim}`}
      at={`${writeNumber(plan.temperature, 2, { decimalComma })} °C at ${altitudeM} m; ${plan.batches} ${plan.batches === 1 ? 'batch' : 'batches'} of ${plan.batchMinutes} min`}
      card={treatmentCard(chosen.way, plan)}
    />
  );
}

function labelsPaper({ context: { records }, one }: PartView): JSX.Element {
  const batches = [...records.treatmentBatch.values()].filter(({ id }) => one === undefined || id === one);
  if (batches.length === 0) return <EmptyNote>No batch is written down yet.</EmptyNote>;
  return <BatchLabelsPaper labels={batches.map((batch) => ({ id: batch.id, lines: batchLabel(batch, records) }))} />;
}

function areasPaper({ context }: PartView): JSX.Element {
  const { today, workshop } = context;
  const { planned } = plannedJobs(context, isHandedOver);
  const areas = careByArea(
    planned.map(({ job, plan }) => ({ job, care: plan.care })),
    today,
  );
  if (areas.length === 0) return <EmptyNote>No tank stands with a client yet.</EmptyNote>;
  return <AreaRoundsPaper letterhead={letterheadOf(workshop)} areas={areas} />;
}
