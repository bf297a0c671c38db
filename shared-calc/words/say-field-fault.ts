import type { FieldFault } from '#shared-calc/records/edit-field.ts';
import { sayEntryFault } from './say-entry-fault.ts';
import { isMisfit, sayMisfit } from './say-misfit.ts';

export function sayFieldFault(fault: FieldFault): string {
  if (fault.kind === 'not-kept') return `This cannot be kept: ${fault.issues[0]?.says ?? 'it is no such record'}.`;
  return isMisfit(fault) ? sayMisfit(fault) : sayEntryFault(fault);
}
