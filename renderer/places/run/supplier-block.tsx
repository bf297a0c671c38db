import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { packWords } from '#shared-calc/quantity/goods-words.ts';
import { Button } from '#renderer/kit/button.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { OnePackMore } from '#shared-calc/buy/one-pack-more.ts';
import type { RunSupplier } from '#shared-calc/buy/shopping-run.ts';
import type { ChosenMaterial } from '#shared-calc/buy/chosen-packs.ts';
import { RunNeeds } from './run-needs.tsx';
import type { OrderDay } from '#shared-calc/papers/order-days.ts';
import css from './run.module.css';
import { Standing } from '#renderer/kit/standing.tsx';

export interface SupplierActs {
  readonly take: (better: OnePackMore) => void;
  readonly csv: (supplier: string) => void;
}

interface BlockParts {
  readonly bill: RunSupplier;
  readonly needs: readonly ChosenMaterial[];
  readonly orderBy: OrderDay | undefined;
  readonly chosen: string | undefined;
  readonly context: BookContext;
  readonly acts: SupplierActs;
}

/** One supplier's part of the run: its bill, its last order day, a better offer, and what is bought there. */
export function SupplierBlock({ bill, needs, orderBy, chosen, context, acts }: BlockParts) {
  const money = (coins: number) => showCoins(coins, context.workshop);
  return (
    <section class={css['supplier']}>
      <header>
        <h2>{bill.name}</h2>
        <p>
          goods <b>{money(bill.goodsCoins)}</b>, carriage{' '}
          <b>{bill.carriageCoins === 0 ? 'free' : money(bill.carriageCoins)}</b>, landed{' '}
          <b>{money(bill.goodsCoins + bill.carriageCoins)}</b> {context.workshop.currency}
        </p>
        {orderBy && <OrderBy orderBy={orderBy} context={context} />}
        <p class={css['links']}>
          <Link href={writeRoute('run', 'order', bill.supplier)}>{actNames.onPaper}</Link>
          <Button look="plain" onClick={() => acts.csv(bill.supplier)}>
            {actNames.saveCsv}
          </Button>
        </p>
      </header>
      {bill.shortOfMinimumCoins > 0 && (
        <Standing state="watch" sign="watch">
          <span>
            {money(bill.shortOfMinimumCoins)} {context.workshop.currency} short of the least order.
          </span>
        </Standing>
      )}
      {bill.better && <Better better={bill.better} context={context} take={acts.take} />}
      <RunNeeds label={`From ${bill.name}`} needs={needs} chosen={chosen} context={context} />
    </section>
  );
}

function OrderBy({
  orderBy: { day, job },
  context: { today, display },
}: Pick<BlockParts, 'context'> & { readonly orderBy: OrderDay }) {
  return (
    <p>
      Order by <b>{paperWeekday(day, display)}</b> for {job}
      {day < today && (
        <Flag state="watch" sign="watch" after>
          late
        </Flag>
      )}
    </p>
  );
}

interface BetterParts {
  readonly better: OnePackMore;
  readonly context: BookContext;
  readonly take: (better: OnePackMore) => void;
}

function Better({ better, context: { workshop, display }, take }: BetterParts) {
  const { label, pack, landedNowCoins, landedThenCoins } = better;
  const money = (coins: number) => showCoins(coins, workshop);
  return (
    <Standing state="offer">
      <span>
        One pack more, {packWords(pack.amount, pack.unit, display)} of {label} at {money(pack.priceCoins)}, and it lands
        at {money(landedThenCoins)} in place of {money(landedNowCoins)}: {money(landedNowCoins - landedThenCoins)} less.
      </span>
      <Button onClick={() => take(better)}>Take it</Button>
    </Standing>
  );
}
