import type { Derived } from '#shared-calc/derive/derived.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { OrderFault, Pricing } from '#shared-calc/bench/order-sums.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import type { PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import type { JobSheet } from '#shared-calc/jobs/job-sheet.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import type { PlanWish } from '#shared-calc/prepare/prep-plan.ts';
import type { WorkingHouse } from '#shared-calc/jobs/working-house.ts';
import { unasked } from '#shared-calc/fields/survey.ts';
import type { Job, Order, Records, Line } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import type { TreatmentAim, TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';
import type { PaperDocument } from './document.ts';

/** A worked-out order, and the wishes for its papers. */
export interface PaperInput {
  readonly derived: Derived;
  readonly records: Records;
  readonly sheet: JobSheet;
  /** The usual lines of its sizes. */
  readonly lines: readonly Line[];
  readonly bench: Bench;
  readonly pricing: Pricing;
  readonly house: WorkingHouse;
  /** The limits of its place for a size; all sizes of a job count, also those left off the paper. */
  readonly place: (size: string) => readonly PlaceCheck[];
  /** Wanted days, and today. */
  readonly wish: PlanWish;
  readonly treatment: { readonly aim: TreatmentAim; readonly way: TreatmentWay | undefined };
  /** An issued quote, to print as it was issued. */
  readonly issued?: QuoteBody | undefined;
  /** An order of the book, to print as it was placed. */
  readonly order?: Order | undefined;
}

/** Why a paper cannot be made. */
export type PaperFault =
  | { readonly kind: 'order'; readonly fault: OrderFault }
  | { readonly kind: 'plan'; readonly fault: PlanFault }
  | { readonly kind: 'job'; readonly fault: JobFault }
  | { readonly kind: 'no-size' }
  | { readonly kind: 'no-leaves' }
  | { readonly kind: 'no-batch' }
  /** A sentence of the trade functions. */
  | { readonly kind: 'refused'; readonly says: string };

export interface MadePaper {
  /** Plain data for `--json`. */
  readonly data: unknown;
  readonly document: PaperDocument;
  readonly csv?: string;
}

export type MakePaper = (input: PaperInput) => Result<MadePaper, PaperFault>;

/** The input of a job's papers; none if the book has no such job. */
export function jobPaperInput(derived: Derived, id: string): PaperInput | undefined {
  const worked = derived.job(id);
  if (!worked) return undefined;
  const { sheet, lines, bench, pricing, house, place, job } = worked;
  const { records, today: on, calendar } = derived;
  const { handover, depositOn: deposit } = job;
  const wish = { on, calendar, ...(handover !== undefined && { handover }), ...(deposit !== undefined && { deposit }) };
  const treatment = { aim: 'clean', way: undefined } as const;
  return { derived, records, sheet, lines, bench, pricing, house, place, wish, treatment };
}

/** The job's own words on a paper; an order without a job has none. */
export type JobWords = Pick<
  Job,
  'id' | 'title' | 'client' | 'contact' | 'site' | 'access' | 'audience' | 'animals' | 'survey'
>;

const noJob: JobWords = {
  id: '',
  title: '',
  client: '',
  contact: '',
  site: '',
  access: '',
  audience: '',
  animals: '',
  survey: unasked,
};

export function jobWords({ sheet }: Pick<PaperInput, 'sheet'>): JobWords {
  return sheet.job ?? noJob;
}

/** `J02 Reading room`, or the sizes of an order: `T03, 2 of T07`. */
export function titleOf({ sheet }: Pick<PaperInput, 'sheet'>): string {
  const { job, columns } = sheet;
  if (job) return `${job.id} ${job.title}`.trim();
  return columns.map(({ key, count }) => (count === 1 ? key : `${count} of ${key}`)).join(', ');
}

export function displayFor({ derived }: Pick<PaperInput, 'derived'>) {
  return derived.display;
}
