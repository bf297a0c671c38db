/** When things run. Passed in as a parameter, so that tests can set their own time. */
export interface Clock {
  readonly now: () => Date;
  /** Returns a function that cancels it. */
  readonly after: (ms: number, run: () => void) => () => void;
  /** Runs in a task of its own, after pending painting and key presses. */
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

/** The page's own way to run something soon. */
export function pageSoon(): Clock['soon'] {
  return 'scheduler' in globalThis ? behindPainting : inTurn();
}

function behindPainting(run: () => void): void {
  void scheduler.postTask(run, { priority: 'background' });
}

/** For a browser without a task scheduler. */
function inTurn(): Clock['soon'] {
  const channel = new MessageChannel();
  const waiting: (() => void)[] = [];
  channel.port1.onmessage = () => waiting.shift()?.();
  return (run) => {
    waiting.push(run);
    channel.port2.postMessage(undefined);
  };
}
