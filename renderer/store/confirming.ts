import { effect, type ReadonlySignal } from '@preact/signals';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { OpenedBench } from './bench-session.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';
import { differingSums } from './confirm-sums.ts';

interface Parts {
  readonly book: BookStore;
  readonly clock: Clock;
  readonly opened: ReadonlySignal<OpenedBench | undefined>;
  readonly display: ReadonlySignal<Display>;
}

/** A pause in writing, longer for a bench of many sizes: the service works all of them. */
const PAUSE_MS = 400;
const PAUSE_A_SIZE_MS = 20;

/** After every save the service works the job from what is stored; where it comes to another price, that is said. */
export function confirming({ book, clock, opened, display }: Parts): () => void {
  let callOff = (): void => undefined;
  const plan = () => {
    callOff();
    const sizes = opened.peek()?.worked.source().columns.length ?? 0;
    callOff = clock.after(PAUSE_MS + PAUSE_A_SIZE_MS * sizes, () => void confirm());
  };
  /** Page and book stand at the same edit, and every size is worked. */
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
