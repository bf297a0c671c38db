import { useMemo } from 'preact/hooks';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { sendToParent, takeFromParent } from '#shared-calc/acts/family-acts.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { touchedBy } from '#shared-calc/derive/house-offers.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { effectWords } from '#shared-calc/papers/house-said.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';

export type FamilyAct = 'take' | 'keep' | 'send';

interface TouchedParts {
  readonly derived: Derived;
  readonly recipe: string;
  readonly lines: readonly string[];
  readonly act: FamilyAct;
}

/** What taking lines from a parent, or sending them up, is to each open job, before it is done. */
export function TouchedPart({ derived, recipe, lines, act }: TouchedParts) {
  const told = useMemo(() => previewOf({ derived, recipe, lines, act }), [derived, recipe, lines.join(), act]);
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

function previewOf({ derived, recipe, lines, act }: TouchedParts) {
  const done =
    act === 'send'
      ? sendToParent.run(derived, { recipe, lines: [...lines], note: '' })
      : takeFromParent.run(derived, { recipe, lines: [...lines], keep: act === 'keep', note: '' });
  return done.ok ? done.value : sayActFault(done.fault);
}
