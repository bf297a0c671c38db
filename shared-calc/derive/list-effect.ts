import { isBefore } from '#shared-calc/jobs/move-job.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { Derived, DerivedJob } from './derived.ts';

/** What is known of a job's quote. */
interface KnownQuote {
  readonly grossCoins: number;
  /** More is to come: something is missing. */
  readonly isAtLeast: boolean;
  /** Prices that are missing. */
  readonly prices: number;
}

/** What a change of prices does to the quote of a job that is still to be sold. */
export interface ListEffect {
  readonly job: string;
  readonly title: string;
  readonly from: KnownQuote;
  readonly to: KnownQuote;
}

/** The jobs whose quote is another with other records, as far as it is known; those with most money at stake first. */
export function listEffects(now: Derived, after: Records): readonly ListEffect[] {
  const next = now.update(after);
  const effects = [...now.records.job.values()].flatMap(({ id, title, state }) => {
    const [from, to] = isBefore(state, 'accepted') ? [knownOf(now.job(id)), knownOf(next.job(id))] : [];
    return from && to && isOther(from, to) ? [{ job: id, title, from, to }] : [];
  });
  const stake = ({ from, to }: ListEffect) => Math.abs(to.grossCoins - from.grossCoins);
  return effects.toSorted((one, other) => stake(other) - stake(one));
}

function knownOf(job: DerivedJob | undefined): KnownQuote | undefined {
  const known = job && job.keys.length > 0 ? job.known() : undefined;
  if (!known?.ok) return undefined;
  const { quote, missing, needs } = known.value;
  return {
    grossCoins: quote.grossCoins,
    isAtLeast: missing.length > 0,
    prices: needs.missing.filter(({ what }) => what === 'price').length,
  };
}

function isOther(from: KnownQuote, to: KnownQuote): boolean {
  return from.grossCoins !== to.grossCoins || from.prices !== to.prices;
}
