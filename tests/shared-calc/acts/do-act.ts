import { actTable, type ActInputs, type ActName } from '#shared-calc/acts/all-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';

export interface Done {
  readonly label: string;
  readonly records: Records;
}

/** Runs an act on the demo's day: its label, and the book after it. */
export function done<N extends ActName>(records: Records, name: N, input: ActInputs[N]): Done {
  const change = actTable[name].run(derive(records, DEMO_DAY), input);
  if (!change.ok) throw new Error(sayActFault(change.fault));
  return { label: change.value.label, records: applyChange(records, change.value) };
}

/** Why an act is refused; empty if it is not. */
export function refused<N extends ActName>(records: Records, name: N, input: ActInputs[N]): string {
  const change = actTable[name].run(derive(records, DEMO_DAY), input);
  return change.ok ? '' : sayActFault(change.fault);
}
