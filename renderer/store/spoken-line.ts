import { signal, type ReadonlySignal } from '@preact/signals';
import type { Clock } from './clock.ts';

/** The last thing said in the quiet line. */
export interface Said {
  readonly words: string;
  readonly refused: boolean;
}

export interface Speaking {
  readonly say: (words: string) => void;
  /** An act that could not be done, with its cure: said until the person goes on to something else. */
  readonly refuse: (sentence: string) => void;
  /** Lost work, or news of the book: said until something is changed. */
  readonly warn: (sentence: string) => void;
  /** The person goes on to something else. */
  readonly moveOn: () => void;
}

export interface SpokenLine {
  readonly said: ReadonlySignal<Said | undefined>;
  readonly speaking: Speaking;
  /** Something was changed. */
  readonly clear: () => void;
}

/** A refusal said for less answers the act that moves on: a box is left with a text that cannot be read. */
const LEAST_SAID_MS = 1_000;

/** What is said in the quiet line, and for how long. */
export function spokenLine(first: Said | undefined, clock: Clock): SpokenLine {
  const said = signal(first);
  let passing: { readonly said: Said; readonly at: number } | undefined;
  return {
    said,
    clear: () => (said.value = undefined),
    speaking: {
      say: (words) => (said.value = { words, refused: false }),
      refuse: (words) => {
        passing = { said: { words, refused: true }, at: clock.now().getTime() };
        said.value = passing.said;
      },
      warn: (words) => (said.value = { words, refused: true }),
      moveOn: () => {
        if (!passing || passing.said !== said.peek()) return;
        if (clock.now().getTime() - passing.at >= LEAST_SAID_MS) said.value = undefined;
      },
    },
  };
}
