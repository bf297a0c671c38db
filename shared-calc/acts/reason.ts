import { z } from 'zod';
import { againstChange } from '#shared-calc/derive/against-change.ts';
import type { Against } from '#shared-calc/derive/against-move.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { added, type Change } from '#shared-calc/records/change.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { Done, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { fingerprint } from './fingerprint.ts';
import { nextNumber } from './next-number.ts';

/** Why something is done although something stands against it, and who decides it. */
export const reasonFields = {
  anyway: z.string().max(10_000).optional().describe('Why it is done although something stands against it.'),
  who: z.string().optional().describe('Who decides it: a rate of the rate book, such as R-builder.'),
};

export interface Reason {
  readonly anyway?: string | undefined;
  readonly who?: string | undefined;
}

export type GivenReason = Pick<Done, 'note' | 'who'>;

/** A reason with its person; nothing if neither is given, refused if one of them is. */
export function readReason(
  records: Records,
  { anyway = '', who = '' }: Reason,
): Result<GivenReason | undefined, ActFault> {
  const note = anyway.trim();
  if (note === '' && who === '') return ok(undefined);
  if (note === '' || who === '') return failed({ kind: 'half-a-reason', lacks: who === '' ? 'who' : 'reason' });
  const rate = findRecord(records, 'rate', who);
  return rate.ok ? ok({ note, who }) : rate;
}

/** A change that moves jobs by what it tells of them, with the reason why they move although something stands against it. */
export function movedAnyway(derived: Derived, change: Change, given: Reason): Result<Change, ActFault> {
  const { records, today: on } = derived;
  const reason = readReason(records, given);
  if (!reason.ok) return reason;
  if (!reason.value) return ok(change);
  const moved = againstChange(derived, change);
  return ok(
    moved.reduce(
      (so, { job, state: step, against }) => withReason(so, records, { step, job, reason: reason.value, against, on }),
      change,
    ),
  );
}

interface IssuedAnyway {
  readonly body: QuoteBody;
  readonly reason: GivenReason | undefined;
  readonly against: readonly Against[];
}

/** The change that issues a quote, with the reason why it is issued all the same. */
export function issueAnyway(records: Records, change: Change, { body, ...rest }: IssuedAnyway): Change {
  const { job, number, revision, issuedOn: on } = body;
  const of = { quote: `${number}${revision}`, ...(job && { job: job.id }) };
  return withReason(change, records, { step: 'issued', on, ...of, ...rest });
}

interface Kept extends Pick<Done, 'step' | 'job' | 'quote'> {
  readonly reason: GivenReason | undefined;
  readonly against: readonly Against[];
  readonly on: Day;
}

/** A change with its reason written down; as it is where nothing stands against it or no reason is given. */
export function withReason(change: Change, records: Pick<Records, 'done'>, kept: Kept): Change {
  const { reason, against, ...rest } = kept;
  if (!reason || against.length === 0) return change;
  const here = change.added.flatMap(({ kind, record }) => (kind === 'done' ? [record.id] : []));
  const told = { ...rest, ...reason, against: [...against], ends: false };
  const id = doneId([...records.done.keys(), ...here], told);
  return { ...change, added: [...change.added, added('done', { id, ...told })] };
}

/**
 * `D-0007-k3x9q1`: the next number, and letters made of what is told. An undone number that is given again is thus
 * never the id of anything else.
 */
export function doneId(ids: readonly string[], told: Omit<Done, 'id'>): string {
  const numbers = ids.map((id) => id.split('-').slice(0, 2).join('-'));
  return `D-${nextNumber('D', numbers, 4)}-${fingerprint(JSON.stringify(told))}`;
}
