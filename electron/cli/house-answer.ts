import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { FromTo, JobEffect } from '#shared-calc/derive/job-effect.ts';
import type { HouseOffer, TouchedJob } from '#shared-calc/derive/house-offers.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { lineOfChange } from '#shared-calc/jobs/house-changes.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { HouseChange, Workshop } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

type Texts = { readonly line: string; readonly from: string | null; readonly to: string | null };

/** A line of a change as `--json` gives it; a line that is new or gone has null on one side. */
export function changeTexts({ before, after }: Pick<HouseChange, 'before' | 'after'>): Texts {
  const line = lineOfChange({ ...(before && { before }), ...(after && { after }) });
  return { line: line?.name ?? '', from: before?.text ?? null, to: after?.text ?? null };
}

export function logJson(change: HouseChange): Record<string, unknown> {
  const { id, recipe, on, note, fromJob, inForceOn, answers, how, of, by, for: tanks } = change;
  return {
    change: id,
    recipe,
    on,
    ...changeTexts(change),
    note,
    fromJob: fromJob ?? null,
    inForceOn: inForceOn ?? null,
    answers,
    ...(how !== undefined && { how }),
    ...(of !== undefined && { of }),
    ...(by !== undefined && { by }),
    ...(tanks && { for: tanks }),
  };
}

/** What taking a change does to a job, differences as `--json` gives them. */
export function effectJson(effect: Result<JobEffect, OrderFault>, { coinDecimals }: Workshop): Record<string, unknown> {
  if (!effect.ok)
    return { needs: [], cost: null, net: null, gross: null, hours: null, why: sayOrderFault(effect.fault) };
  const { needs, cost, net, gross, hours } = effect.value;
  const money = ({ from, to }: FromTo) => coinsText(to - from, coinDecimals);
  return {
    needs: needs.map(({ material, label, unit, from, to }) => ({
      material,
      label,
      unit,
      amount: Number((to - from).toFixed(3)),
    })),
    cost: money(cost),
    net: money(net),
    gross: money(gross),
    hours: cleanNoise(hours.to - hours.from),
  };
}

export function offerJson({ change, effect }: Pick<HouseOffer, 'change' | 'effect'>, workshop: Workshop) {
  return { change: change.id, ...changeTexts(change), note: change.note, ...effectJson(effect(), workshop) };
}

export function touchedJson({ job, will, effect }: TouchedJob, derived: Derived): Record<string, unknown> {
  const money = (coins: number) => coinsText(coins, derived.workshop.coinDecimals);
  const pair = ({ from, to }: FromTo) => ({ from: money(from), to: money(to) });
  const worked = effect ?? unmoved(derived, job.id);
  const sums = worked?.ok ? { cost: pair(worked.value.cost), net: pair(worked.value.net) } : { cost: null, net: null };
  return { job: job.id, state: job.state, will, ...sums };
}

/** A job that nothing becomes of keeps its sums. */
function unmoved(derived: Derived, id: string): Result<Pick<JobEffect, 'cost' | 'net'>, OrderFault> | undefined {
  const sums = derived.job(id)?.sums();
  if (!sums?.ok) return sums;
  const { costCoins, netCoins } = sums.value.quote;
  return { ok: true, value: { cost: { from: costCoins, to: costCoins }, net: { from: netCoins, to: netCoins } } };
}
