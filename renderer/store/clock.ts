/** When things are done: handed in, so that tests keep their own time. */
export interface Clock {
  readonly now: () => Date;
  /** Answers how to call it off. */
  readonly after: (ms: number, run: () => void) => () => void;
  /** In a turn of its own, so that what came before can be painted first. */
  readonly soon: (run: () => void) => void;
}

/** The page's own time. */
export function pageClock(): Clock {
  const channel = new MessageChannel();
  const waiting: (() => void)[] = [];
  channel.port1.onmessage = () => waiting.shift()?.();
  return {
    now: () => new Date(),
    after: (ms, run) => {
      const timer = setTimeout(run, ms);
      return () => clearTimeout(timer);
    },
    soon: (run) => {
      waiting.push(run);
      channel.port2.postMessage(undefined);
    },
  };
}
