import type { Clock } from '#renderer/store/clock.ts';

/** A clock that moves only when a test moves it. */
export interface OwnClock extends Clock {
  /** Runs everything that is scheduled soon, and what that schedules, until nothing is left. */
  readonly rest: () => void;
  /** Moves the clock by this many milliseconds. */
  readonly pass: (ms: number) => void;
}

export function ownClock(): OwnClock {
  const soon: (() => void)[] = [];
  let timers: { readonly at: number; readonly run: () => void }[] = [];
  let now = 0;
  const rest = () => {
    for (let run = soon.shift(); run; run = soon.shift()) run();
  };
  return {
    now: () => new Date(now),
    soon: (run) => void soon.push(run),
    after: (ms, run) => {
      const timer = { at: now + ms, run };
      timers.push(timer);
      return () => (timers = timers.filter((each) => each !== timer));
    },
    rest,
    pass: (ms) => {
      now += ms;
      const due = timers.filter((timer) => timer.at <= now);
      timers = timers.filter((timer) => timer.at > now);
      for (const timer of due) timer.run();
      rest();
    },
  };
}
