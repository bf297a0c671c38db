import type { CureView, PanelActs } from '#renderer/panel/panel-view.ts';
import type { BoxPlace } from '#renderer/bench/view-model.ts';
import { mendsInSteps } from '#shared-calc/prepare/mends.ts';
import { sayMend } from '#shared-calc/prepare/say-mend.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';

interface Parts {
  readonly book: BookStore;
  readonly clock: Clock;
  /** The open job; none for an issued quote. */
  readonly job: () => string | undefined;
  /** The cell that the side panel shows. */
  readonly here: () => BoxPlace | undefined;
}

/** The cures are worked once nobody has typed for so long. */
const REST = 150; // ms

/** Works the cures of a check in the background, one change tried a task, and takes one of them. */
export function cureWorker({ book, clock, job, here }: Parts): Pick<PanelActs, 'workCures' | 'takeCure'> {
  return {
    workCures: (tell) => {
      const steps = stepsFor({ book, job: job(), here: here() });
      let isOver = false;
      const goOn = () => {
        if (isOver) return;
        const step = steps.next();
        if (step.done) tell(step.value);
        else clock.soon(goOn);
      };
      const callOff = clock.after(REST, goOn);
      return () => {
        isOver = true;
        callOff();
      };
    },
    takeCure: ({ changes }) => {
      const [of, place] = [job(), here()];
      if (of === undefined || !place) return;
      const writings = changes.map(({ line, text }) => ({ column: place.column, line, text }));
      book.doAct('setValues', { job: of, writings, by: 'us' });
    },
  };
}

interface Asked {
  readonly book: BookStore;
  readonly job: string | undefined;
  readonly here: BoxPlace | undefined;
}

/** The book as it is when the first step is taken. */
function* stepsFor({ book, job = '', here }: Asked): Generator<undefined, readonly CureView[], undefined> {
  const derived = book.derived.peek();
  const { display, workshop } = derived;
  const worked = derived.job(job);
  const check = here && worked?.bench.lines(here.column).find(({ name }) => name === here.row);
  if (!worked || !here || !check) return [];
  const { bench, pricing } = worked;
  const mends = yield* mendsInSteps(bench, { column: here.column, check }, { pricing, display });
  return mends.map((mend) => ({ says: readUnits(sayMend(mend, workshop), display), changes: mend.changes }));
}
