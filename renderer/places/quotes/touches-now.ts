import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { priceTouch, type PriceTouch } from '#shared-calc/jobs/price-touch.ts';
import type { Job, PackPrice, Records } from '#shared-calc/records/records.ts';
import { readIssued } from './issued-quotes.ts';

/** A price that took the place of another. */
export interface NewPrice {
  readonly material: string;
  readonly label: string;
  readonly amount: number;
  readonly unit: string;
  readonly from: Day;
  readonly beforeCoins: number;
  readonly coins: number;
}

export interface TouchesNow {
  readonly touches: readonly PriceTouch[];
  readonly prices: readonly NewPrice[];
}

/** An accepted job with no quote of ours is held against the prices of this many days ago. */
const LOOK_BACK_DAYS = 30;

/**
 * What prices that changed since each open quote's own day do to it, and to accepted jobs not bought yet: those that
 * hold already, and those that are announced.
 */
export function touchesNow(records: Records, today: Day): TouchesNow {
  const jobs = [...records.job.values()].filter((job) => isBefore(job.state, 'ordered'));
  const touches = jobs.flatMap((job) => {
    const since = pricesOf(records, job, today);
    if (since === undefined) return [];
    const alone = { ...records, job: new Map([[job.id, job]]) };
    return priceTouch({ before: { ...alone, packPrice: pricesUntil(records, since) }, after: alone, today });
  });
  const days = jobs.flatMap((job) => pricesOf(records, job, today) ?? []);
  const first = days.toSorted()[0];
  return { touches, prices: first === undefined ? [] : newPrices(records, first) };
}

/** The day whose prices a job was priced at for its client; none for one that nobody has priced or accepted. */
function pricesOf(records: Records, job: Job, today: Day): Day | undefined {
  const quote = latestQuote(records, job.id);
  const body = quote && readIssued(quote).body;
  if (body) return body.pricesOn;
  return isBefore(job.state, 'accepted') ? undefined : addDays(today, -LOOK_BACK_DAYS);
}

function pricesUntil({ packPrice }: Pick<Records, 'packPrice'>, day: Day): Records['packPrice'] {
  return new Map([...packPrice].filter(([, price]) => price.from <= day));
}

/** Prices from after a day on, each with the one before it, the latest first; a pack's very first price changes nothing. */
function newPrices(records: Records, since: Day): readonly NewPrice[] {
  const prices: NewPrice[] = [];
  for (const [id, ofPack] of Map.groupBy(records.packPrice.values(), (price) => price.pack)) {
    const pack = records.pack.get(id);
    const inOrder = ofPack.toSorted((one, other) => (one.from < other.from ? -1 : 1));
    const goods = pack && (records.material.get(pack.material) ?? records.tank.get(pack.material));
    if (!pack || !goods) continue;
    const unit = records.material.get(pack.material)?.unit ?? 'each';
    for (const { price, before } of changesIn(inOrder, since)) {
      const { from, priceCoins: coins } = price;
      const told = { material: pack.material, label: goods.label, amount: pack.amount, unit };
      prices.push({ ...told, from, coins, beforeCoins: before.priceCoins });
    }
  }
  return prices.toSorted((one, other) => (one.from === other.from ? 0 : one.from < other.from ? 1 : -1));
}

function changesIn(
  prices: readonly PackPrice[],
  since: Day,
): readonly { readonly price: PackPrice; readonly before: PackPrice }[] {
  return prices.flatMap((price, at) => {
    const before = prices[at - 1];
    return before && price.from > since && price.priceCoins !== before.priceCoins ? [{ price, before }] : [];
  });
}
