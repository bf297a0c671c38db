import type { Signal, ReadonlySignal } from '@preact/signals';
import type { AllBenchActs } from '#renderer/bench/bench-acts.ts';
import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { PanelActs } from '#renderer/panel/panel-view.ts';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';

interface Parts {
  readonly acts: AllBenchActs;
  readonly chosen: ReadonlySignal<BoxPlace | undefined>;
  /** Lines stepped down to from the selected cell, nearest last. */
  readonly steps: Signal<readonly string[]>;
  readonly leave: () => void;
  readonly go: (place: BoxPlace) => void;
  readonly cures: (here: () => BoxPlace | undefined) => Pick<PanelActs, 'workCures' | 'takeCure'>;
}

/** Acts of the side panel, on the cell it shows: the selected one, or the one stepped down to. */
export function panelActs({ acts, chosen, steps, leave, go, cures }: Parts): PanelActs {
  const here = (): BoxPlace | undefined => {
    const place = chosen.peek();
    return place && { row: steps.peek().at(-1) ?? place.row, column: place.column };
  };
  const withPlace = (run: (place: BoxPlace) => unknown) => () => {
    const place = here();
    if (place) run(place);
  };
  const help = (): RuleHelp | undefined => {
    const place = here();
    return place && acts.helpFor(place);
  };
  return {
    help: {
      check: (text) => help()?.check(text) ?? { faults: [], marks: [] },
      complete: (text, cursor) => help()?.complete(text, cursor) ?? [],
      hint: (text, cursor) => help()?.hint(text, cursor),
    },
    write: (text) => {
      const place = here();
      return place && acts.write([{ ...place, text }]);
    },
    stepDown: (name) => {
      if (name !== here()?.row) steps.value = [...steps.peek(), name];
    },
    stepUp: () => (steps.value = steps.peek().slice(0, -1)),
    backToHouse: withPlace(acts.backToHouse),
    sendToHouse: withPlace(acts.sendToHouse),
    forWholeJob: withPlace((place) => acts.holdForJob(place)),
    alwaysForTank: withPlace((place) => acts.keepForTank(place)),
    clientAsked: (asked) => withPlace((place) => acts.sayWhoAsked(place, asked ? 'client' : 'us'))(),
    writeNote: (note) => withPlace((place) => acts.writeNote(place, note))(),
    ...cures(here),
    goTo: (row) => withPlace(({ column }) => go({ row, column }))(),
    leave,
  };
}
