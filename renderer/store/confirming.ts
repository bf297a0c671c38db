import { wholeSums } from '#shared-calc/bench/order-sums.ts';
import { effect, type ReadonlySignal } from '@preact/signals';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { OpenedBench } from './bench-session.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';
import type { Output } from '#shared-calc/contract/channels.ts';
import { money } from './foot-boxes.ts';
import type { WorkedBench } from './worked-bench.ts';

interface Parts {
  readonly book: BookStore;
  readonly clock: Clock;
  readonly opened: ReadonlySignal<OpenedBench | undefined>;
  readonly display: ReadonlySignal<Display>;
}

/** Delay after the last edit; longer for a bench of many sizes, because the service computes all of them. */
const PAUSE_MS = 400;
const PAUSE_A_SIZE_MS = 20;

/** After every save the service computes the job from the stored records. A price that differs is shown. */
export function confirming({ book, clock, opened, display }: Parts): () => void {
  let callOff = (): void => undefined;
  const plan = () => {
    callOff();
    const sizes = opened.peek()?.worked.source().columns.length ?? 0;
    callOff = clock.after(PAUSE_MS + PAUSE_A_SIZE_MS * sizes, () => void confirm());
  };
  /** Page and book are at the same edit, and every size is computed. */
  const stands = (now: OpenedBench) => opened.peek() === now && book.waiting.peek() === 0 && !now.worked.isBehind();
  const confirm = async () => {
    const now = opened.peek();
    if (now?.job === undefined || !book.reached.peek()) return;
    if (!stands(now)) {
      plan();
      return;
    }
    const confirmed = await book.call('bench.confirm', { job: now.job });
    if (!confirmed.ok || !stands(now) || confirmed.value.revision !== book.info.peek().revision) return;
    const says = differingSums(now.worked, confirmed.value.columns, display.peek());
    if (says !== undefined) book.warn(says);
  };
  let first = true;
  const stop = effect(() => {
    void book.settled.value;
    if (!first) plan();
    first = false;
  });
  return () => {
    stop();
    callOff();
  };
}

type Confirmed = Output<'bench.confirm'>['columns'];

/** Columns where page and service compute different prices, in one sentence; `undefined` if all agree. */
function differingSums(worked: WorkedBench, confirmed: Confirmed, display: Display): string | undefined {
  const wrong = confirmed.flatMap(({ column, sums }) => {
    const known = worked.source().columns.some((each) => each.key === column);
    const ours = known ? wholeSums(worked.sums(column)) : undefined;
    const page = ours?.ok ? ours.value.quote.grossCoins : undefined;
    if (page === sums?.grossCoins) return [];
    return [`${column}: ${said(page, display)} here, ${said(sums?.grossCoins, display)} from what is stored`];
  });
  if (wrong.length === 0) return undefined;
  return `This page and the book do not come to the same price. ${wrong.join('; ')}. Open the book again before you issue a quote.`;
}

function said(coins: number | undefined, display: Display): string {
  return coins === undefined ? 'no price' : `${money(coins, display)} ${display.currency}`;
}
