import { runAct, type Act } from '#shared-calc/acts/act.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Book } from '#electron/book/book.ts';
import { refusedAct, writeChange } from './job-acts.ts';
import { refusal, type Outcome } from './outcome.ts';

interface AskedAct<I> {
  readonly act: Act<I>;
  /** As data, before it is parsed; what is undefined is left out. */
  readonly input: Readonly<Record<string, unknown>>;
}

/** Does an act and writes what it changes; refused, the outcome says why. */
export function writeAct<I>(book: Book, derived: Derived, { act, input }: AskedAct<I>): Result<Change, Outcome> {
  const given = Object.entries(input).filter(([, value]) => value !== undefined);
  const change = runAct(act as Act, derived, Object.fromEntries(given));
  if (!change.ok) return failed(refusedAct(change.fault));
  const says = writeChange(book, change.value);
  return says === undefined ? ok(change.value) : failed(refusal(says));
}
