import type { Signal } from '@preact/signals';
import type { Bridge } from '#renderer/bridge.ts';
import type { Output } from '#shared-calc/contract/channels.ts';
import type { Clock } from './clock.ts';

/** Delay before a service that does not answer is tried again. */
const RETRY_MS = 2000;

export interface BookReader {
  /** The whole book; retries while the service does not answer. */
  readonly read: () => Promise<Output<'book.read'>>;
  /** The service is reachable again: pending reads retry at once. */
  readonly wake: () => void;
}

export function bookReader(bridge: Bridge, clock: Clock, reached: Signal<boolean>): BookReader {
  let goOn = (): void => undefined;
  const pause = () =>
    new Promise<void>((resolve) => {
      const stop = clock.after(RETRY_MS, resolve);
      goOn = () => {
        stop();
        resolve();
      };
    });
  return {
    wake: () => {
      reached.value = true;
      goOn();
    },
    read: async () => {
      for (;;) {
        const read = await bridge.call('book.read', {});
        reached.value = read.ok;
        if (read.ok) return read.value;
        await pause();
      }
    },
  };
}
