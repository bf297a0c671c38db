import type { UseName } from '#shared-calc/fields/uses.ts';
import type { DayFault } from '#shared-calc/calendar/day.ts';
import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { BoxFault } from '#shared-calc/recipe/read-box.ts';
import type { Job } from '#shared-calc/records/records.ts';

/** Why an act on a job is refused: facts, worded in words/say-job-fault.ts. */
export type JobFault =
  | { readonly kind: 'no-job'; readonly job: string; readonly jobs: readonly string[] }
  | { readonly kind: 'no-title' }
  /** The recipe has no line for a use. */
  | { readonly kind: 'not-given'; readonly use: UseName }
  | { readonly kind: 'no-recipe'; readonly recipe: string; readonly recipes: readonly string[] }
  | { readonly kind: 'no-tank'; readonly tank: string; readonly near?: string }
  | { readonly kind: 'bad-count'; readonly size: string; readonly most: number }
  | { readonly kind: 'bad-size'; readonly size: string }
  | { readonly kind: 'size-measured'; readonly size: string }
  | { readonly kind: 'no-size'; readonly size: string; readonly sizes: readonly string[] }
  | { readonly kind: 'no-sizes'; readonly job: string }
  | { readonly kind: 'no-set'; readonly text: string }
  | { readonly kind: 'no-line'; readonly line: string; readonly near?: string }
  /** Another size of the job has it: its label, the size as it is called, and the recipe of that. */
  | { readonly kind: 'not-in-recipe'; readonly line: string; readonly size: string; readonly recipe: string }
  | { readonly kind: 'unreadable'; readonly line: string; readonly text: string; readonly fault: BoxFault }
  | { readonly kind: 'loop'; readonly line: string; readonly text: string; readonly cycle: readonly string[] }
  | DayFault
  | { readonly kind: 'no-state'; readonly state: string; readonly near?: string; readonly states: readonly string[] }
  | { readonly kind: 'same-state'; readonly job: string; readonly state: Job['state'] }
  | { readonly kind: 'no-deposit-yet'; readonly job: string; readonly state: Job['state'] }
  | { readonly kind: 'not-an-amount'; readonly text: string }
  | { readonly kind: 'not-worked'; readonly job: string; readonly fault: OrderFault }
  | { readonly kind: 'no-material'; readonly material: string; readonly near?: string }
  | (LessThere & { readonly kind: 'not-in-store' })
  /** Not so much is kept for the job as it is to give back. */
  | (LessThere & { readonly kind: 'not-kept' });

interface LessThere {
  readonly job: string;
  readonly material: string;
  readonly asked: number;
  readonly free: number;
  readonly unit: string;
}
