import type { PaperFault } from '#shared-calc/papers/paper-input.ts';
import type { Called } from './called.ts';
import { sayJobFault } from './say-job-fault.ts';
import { sayOrderFault } from './say-order-fault.ts';
import { sayPlanFault } from './say-plan-fault.ts';

export function sayPaperFault(fault: PaperFault, called: Called): string {
  switch (fault.kind) {
    case 'order':
      return sayOrderFault(fault.fault, called);
    case 'plan':
      return sayPlanFault(fault.fault, called);
    case 'job':
      return sayJobFault(fault.fault);
    case 'no-size':
      return 'There is no size yet: take one first.';
    case 'no-leaves':
      return 'How many leaves this order takes is not known yet, or it takes none.';
    case 'no-batch':
      return 'No batch is written down yet.';
    case 'refused':
      return fault.says;
  }
}
