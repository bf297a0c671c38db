import { capital } from '#shared-calc/rule/capital.ts';
import type { ActFault, Against } from '#shared-calc/acts/act-fault.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import type { RecordFault } from '#shared-calc/records/book-fault.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';
import { sayJobFault } from './say-job-fault.ts';
import { isRecordFault, sayRecord, sayRecordFault } from './say-record-fault.ts';

type Own = Exclude<ActFault, JobFault | RecordFault>;

const sayings: Sayings<Own> = {
  'no-record': ({ record, near }) =>
    `There is no ${sayRecord(record)}.${near === undefined ? '' : ` Did you mean ${near}?`}`,
  needed: ({ record, by }) =>
    `${capital(sayRecord(record))} stays. ${by.map(({ what, why }) => `It is needed for ${what}: ${why}.`).join(' ')}`,
  'coins-change': ({ from, to }) =>
    `The currency has ${from} decimals, not ${to}: every amount of the book changes with them. Use rescaleCoins.`,
  'uneven-coins': ({ record, amount }) =>
    `${amount} of ${record.kind === 'workshop' ? 'a step of the workshop' : `the ${sayRecord(record)}`} has parts that such a coin does not know. Write it without them first.`,
  'bad-input': ({ issues }) =>
    `${capital(issues.map(({ field, says }) => `${field === '' ? 'the input' : field} ${says}`).join('; '))}.`,
};

/** Why an act is refused, in one sentence. */
export function sayActFault(fault: ActFault): string {
  if (isOwn(fault)) return sayByKind(sayings, fault);
  return isRecordFault(fault) ? sayRecordFault(fault) : sayJobFault(fault);
}

function isOwn(fault: ActFault): fault is Own {
  return Object.hasOwn(sayings, fault.kind);
}

/** A refusal for programs. */
export interface FaultJson {
  readonly kind: string;
  readonly says: string;
  /** The field or the record that it is about. */
  readonly at?: string;
  readonly against?: readonly Against[];
}

export function faultJson(fault: ActFault): FaultJson {
  const at = 'at' in fault ? fault.at : 'record' in fault ? sayRecord(fault.record) : undefined;
  const against = againstOf(fault);
  return {
    kind: fault.kind,
    says: sayActFault(fault),
    ...(at !== undefined && at !== '' && { at }),
    ...(against !== undefined && { against }),
  };
}

function againstOf(fault: ActFault): readonly Against[] | undefined {
  if (fault.kind === 'needed') return fault.by;
  return fault.kind === 'still-used' ? usersOf(fault) : undefined;
}

function usersOf({ record, by }: Extract<RecordFault, { readonly kind: 'still-used' }>): readonly Against[] {
  return by.map((user) => ({ what: sayRecord(user), why: `it names ${record.id}` }));
}
