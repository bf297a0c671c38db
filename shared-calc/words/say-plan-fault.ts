import { nounOf } from '#shared-calc/fields/uses.ts';
import type { PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import type { DerivedJob } from '#shared-calc/derive/derived.ts';
import type { Called } from './called.ts';
import { calledByLines } from './called-by-words.ts';
import { sayOrderFault } from './say-order-fault.ts';

export function sayPlanFault(fault: PlanFault, called?: Called): string {
  switch (fault.kind) {
    case 'no-amount-yet':
      return sayOrderFault(fault, called);
    case 'no-sizes':
      return `${fault.job} has no size yet: take one first.`;
    case 'not-given':
      return `No ${nounOf(fault.use)} is given in this recipe.`;
    case 'no-culture':
      return `No culture kind called ${fault.culture} in the culture book: springtails have no date.`;
    case 'never-delivered':
      return `The ${fault.what} of this order can never arrive: their supplier delivers only on days that are closed.`;
    case 'too-long':
      return `${fault.line} of ${fault.days} days is more than a hundred years.`;
    case 'below-zero':
      return `${fault.line} of ${fault.days} days: a wait cannot be below zero.`;
    case 'off-calendar':
      return 'The dates run off the calendar: look at the closed days and at the handover.';
    case 'refused':
      return fault.says;
  }
}

/** The same for a job, with the page's words for its lines and sizes. */
export function sayNoPlan({ bench }: Pick<DerivedJob, 'bench'>, fault: PlanFault): string {
  return sayPlanFault(fault, calledByLines(bench.input()));
}
