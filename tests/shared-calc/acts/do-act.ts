import { expect } from 'vitest';
import { runAct, type Act } from '#shared-calc/acts/act.ts';
import { actTable, type ActInputs, type ActName } from '#shared-calc/acts/all-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
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

/** The records with an act done, its input as it comes from outside; taken back, they are as before. */
export function doneAndBack(act: Act, input: unknown, from: Records): Records {
  const made = runAct(act, derive(from, DEMO_DAY), input);
  if (!made.ok) throw new Error(sayActFault(made.fault));
  const after = applyChange(from, made.value);
  expect(applyChange(after, invertChange(made.value))).toEqual(from);
  return after;
}

/** Why an act is refused, its input as it comes from outside; `done` if it is not. */
export function refusedOrDone(act: Act, input: unknown, from: Records): string {
  const made = runAct(act, derive(from, DEMO_DAY), input);
  return made.ok ? 'done' : sayActFault(made.fault);
}
