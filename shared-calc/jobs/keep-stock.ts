import { kept, lotsOf, membersOf, NOTHING } from '#shared-calc/buy/ledger.ts';
import { partsSum, takeLots, type LotPart } from '#shared-calc/buy/take-lots.ts';
import { unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Move, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { findJob } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { moveIds, movesAdded, partMoves } from './written-moves.ts';

export interface Keeping {
  readonly job: string;
  readonly goods: string;
  /** In the unit of the goods; below 0 gives back. */
  readonly amount: number;
  readonly on: Day;
  /** The day on which the job uses them: goods that are fit on it are kept first. */
  readonly use?: Day | undefined;
}

/** Keeps an amount of goods for a job, so that no other job gets it, or gives some back. Refused if there is less. */
export function keepStock(records: Records, asked: Keeping): Result<Change, JobFault> {
  const { job: id, goods, amount, on, use } = asked;
  const job = findJob(records, id);
  if (!job.ok) return job;
  const unit = unitInStore(goods, records);
  if (unit === undefined) return failed(noMaterial(records, goods));
  const members = membersOf(records, goods);
  const parts =
    amount < 0
      ? keptParts(records, { job: id, members, on }, -amount)
      : takeLots(records, { members, amount, on, use, from: 'standing' });
  const free = partsSum(parts);
  if (Math.abs(amount) - free > NOTHING) {
    const kind = amount < 0 ? 'not-kept' : 'not-in-store';
    return failed({ kind, job: id, material: goods, asked: Math.abs(amount), free, unit });
  }
  const label =
    amount < 0 ? `${-amount} ${unit} of ${goods} given back by ${id}` : `${amount} ${unit} of ${goods} kept for ${id}`;
  const signed = amount < 0 ? parts.map((part) => ({ ...part, amount: -part.amount })) : parts;
  return ok(movesAdded(label, partMoves(signed, { on, what: 'kept', job: id }, moveIds(records))));
}

interface KeptOf {
  readonly job: string;
  readonly members: readonly string[];
  readonly on: Day;
}

function keptParts(records: Pick<Records, 'move'>, { job, members, on }: KeptOf, most: number): readonly LotPart[] {
  const parts: LotPart[] = [];
  let left = most;
  for (const lot of members.flatMap((of) => lotsOf(records, of))) {
    const amount = Math.min(left, kept(lot, job, on));
    if (amount <= NOTHING) continue;
    parts.push({ lot, amount });
    left -= amount;
  }
  return parts;
}

/** Gives back all that is kept for a job. */
export function releaseStock(records: Pick<Records, 'move'>, job: string, on: Day): Change {
  return movesAdded(`nothing kept for ${job} any more`, releaseMoves(records, job, on));
}

function releaseMoves(records: Pick<Records, 'move'>, job: string, on: Day): readonly Move[] {
  const goods = new Set([...records.move.values()].filter((move) => move.job === job).map(({ of }) => of));
  const parts = keptParts(records, { job, members: [...goods], on }, Infinity);
  const back = parts.map((part) => ({ ...part, amount: -part.amount }));
  return partMoves(back, { on, what: 'kept', job }, moveIds(records));
}

function noMaterial(records: Records, material: string): JobFault {
  const near = nearestName(material, [...records.material.keys(), ...records.tank.keys(), ...records.plant.keys()]);
  return { kind: 'no-material', material, ...(near !== undefined && { near }) };
}
