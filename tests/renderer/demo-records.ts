import { readDemo } from '#electron/book/read-demo.ts';
import { applyChange, emptyChange } from '#shared-calc/records/change.ts';
import { mapKinds, type Records } from '#shared-calc/records/records.ts';

/** The date in the page's tests. */
export const demoDay = '2027-03-15';

/** The demo book in memory; its prices are valid from the first of the month. */
export function demoRecords(): Records {
  const demo = readDemo(demoDay);
  if (!demo.ok) throw new Error(`${demo.fault.file}: ${demo.fault.says}`);
  const none = mapKinds<Records>(() => new Map());
  return applyChange(none, { ...emptyChange('demo'), added: demo.value });
}
