/** When things are done: handed in, so that tests keep their own time. */
export interface Clock {
  readonly now: () => Date;
  /** Answers how to call it off. */
  readonly after: (ms: number, run: () => void) => () => void;
  /** In a turn of its own, after what came before has been painted and keys have been answered. */
  readonly soon: (run: () => void) => void;
}

/** The page's own time. */
export function pageClock(): Clock {
  return {
    now: () => new Date(),
    after: (ms, run) => {
      const timer = setTimeout(run, ms);
      return () => clearTimeout(timer);
    },
    soon: pageSoon(),
  };
}

/** The page's own way to do something soon. */
export function pageSoon(): Clock['soon'] {
  return 'scheduler' in globalThis ? behindPainting : inTurn();
}

function behindPainting(run: () => void): void {
  void scheduler.postTask(run, { priority: 'background' });
}

/** For a browser that knows no order of tasks. */
function inTurn(): Clock['soon'] {
  const channel = new MessageChannel();
  const waiting: (() => void)[] = [];
  channel.port1.onmessage = () => waiting.shift()?.();
  return (run) => {
    waiting.push(run);
    channel.port2.postMessage(undefined);
  };
}
