import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { ActFault } from '#shared-calc/acts/act-fault.ts';
import { moveAndTake } from '#shared-calc/acts/move-acts.ts';
import type { Reason } from '#shared-calc/acts/reason.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { Short } from '#shared-calc/acts/build-job.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { isBackward } from '#shared-calc/jobs/move-job.ts';
import { soldSaid } from '#shared-calc/papers/sold-said.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
import type { Acceptance } from '#shared-calc/acts/accept-quote.ts';
import { closeDecimals, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import type { JobAct } from './job-acts.ts';

/** Moves a job, and notes what is unusual: a step back, no quote, a Store that had less than the build used. */
export function moveAct(
  derived: Derived,
  input: Reason & Acceptance & { readonly job: string; readonly state: string },
): Result<JobAct, ActFault> {
  const { records } = derived;
  const { job, state } = input;
  const moved = moveAndTake(derived, input);
  if (!moved.ok) return moved;
  const { change, short, notTaken } = moved.value;
  const taken = notTaken ? [`Nothing taken from the Store. ${sayJobFault(notTaken)}`] : sayShort(short, records);
  return ok({
    job,
    change,
    notices: [...moveNotices(records, job, state), ...soldSaid(derived, change, job), ...taken],
  });
}

/** Notes a deposit that is less than the last quote requires. */
export function smallDeposit(records: Records, job: string, coins: number): readonly string[] {
  const quote = latestQuote(records, job);
  const body = quote && bodyOf(quote);
  if (!body || coins >= body.sums.depositCoins) return [];
  const deposit = coinsText(body.sums.depositCoins, workshopOf(records).coinDecimals);
  return [`Quote ${body.number} ${body.revision} asks for ${deposit}.`];
}

function moveNotices(records: Records, id: string, state: string): readonly string[] {
  const from = records.job.get(id)?.state;
  const to = jobStates.find((each) => each === state);
  const notices: string[] = [];
  if (from && to && isBackward(from, to)) notices.push(`${id} goes back from ${from} to ${to}.`);
  if (to === 'quoted' && !latestQuote(records, id)) notices.push(`No quote of ${id} has been issued.`);
  return notices;
}

function sayShort(short: readonly Short[], records: Records): readonly string[] {
  if (short.length === 0) return [];
  const goods = short.map(({ material, amount }) => {
    const { label, unit } = records.material.get(material) ?? {
      label: records.tank.get(material)?.label,
      unit: 'each',
    };
    return `${writeNumber(amount, unit === 'each' ? 0 : closeDecimals(amount, 2))} ${unit} of ${label ?? material}`;
  });
  return [`The Store had less than the build took, by ${goods.join('; ')}.`];
}
