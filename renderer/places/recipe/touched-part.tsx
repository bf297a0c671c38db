import { useMemo } from 'preact/hooks';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { runAct } from '#shared-calc/acts/act.ts';
import { actTable } from '#shared-calc/acts/all-acts.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { touchedBy } from '#shared-calc/derive/house-offers.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { effectWords } from '#shared-calc/papers/house-said.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import type { FamilyMove } from './family-move.ts';

interface TouchedParts {
  readonly derived: Derived;
  readonly asked: FamilyMove;
}

/** What taking lines from a parent, or sending them up, is to each open job, before it is done. */
export function TouchedPart({ derived, asked }: TouchedParts) {
  const told = useMemo(() => previewOf(derived, asked), [derived, asked]);
  return typeof told === 'string' ? <MutedLine>{told}</MutedLine> : <TouchedJobs derived={derived} change={told} />;
}

interface JobParts {
  readonly derived: Derived;
  readonly change: Change;
}

/** What a change of a house is to each open job. */
export function TouchedJobs({ derived, change }: JobParts) {
  const told = useMemo(() => touchedBy(derived, applyChange(derived.records, change)), [derived, change]);
  if (told.length === 0) return <MutedLine>No open job is touched.</MutedLine>;
  return (
    <Table
      label="Open jobs that are touched"
      rows={told}
      keyOf={({ job }) => job.id}
      columns={[
        { head: 'Job', names: true, cell: ({ job }) => jobName(job) },
        { head: 'It will', cell: ({ will }) => will },
        { head: 'Effect', cell: ({ effect }) => (effect ? effectWords(effect, derived) : '') },
      ]}
    />
  );
}

function previewOf(derived: Derived, { act, input }: FamilyMove) {
  const done = runAct(actTable[act], derived, input);
  return done.ok ? done.value : sayActFault(done.fault);
}
