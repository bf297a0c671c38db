import { signal, type ReadonlySignal } from '@preact/signals';

/** Which topic the help panel shows. */
export interface HelpState {
  readonly isOpen: ReadonlySignal<boolean>;
  /** `undefined` is the topic of the place on the page. */
  readonly topic: ReadonlySignal<string | undefined>;
  /** Opens the help, at a topic or at the place's own. */
  readonly show: (topic?: string) => void;
  readonly close: () => void;
  /** Another place is shown: the help shows that place's topic. */
  readonly follow: () => void;
}

export function helpState(): HelpState {
  const isOpen = signal(false);
  const topic = signal<string | undefined>(undefined);
  return {
    isOpen,
    topic,
    show: (id) => {
      topic.value = id;
      isOpen.value = true;
    },
    close: () => (isOpen.value = false),
    follow: () => (topic.value = undefined),
  };
}
