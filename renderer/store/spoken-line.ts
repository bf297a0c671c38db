import { signal, type ReadonlySignal } from '@preact/signals';
import type { Clock } from './clock.ts';

/** The last message in the status line. */
export interface Said {
  readonly words: string;
  readonly refused: boolean;
}

export interface Speaking {
  readonly say: (words: string) => void;
  /** An act that failed, with its cure: shown until the user does something else. */
  readonly refuse: (sentence: string) => void;
  /** Lost work, or news of the book: shown until something is changed. */
  readonly warn: (sentence: string) => void;
  /** What the last edit moved: shown until the next. */
  readonly tellMoved: (words: string) => void;
  /** The user does something else. */
  readonly moveOn: () => void;
}

export interface SpokenLine {
  readonly said: ReadonlySignal<Said | undefined>;
  readonly moved: ReadonlySignal<string>;
  readonly speaking: Speaking;
  /** Something was changed. */
  readonly clear: () => void;
}

/** A refusal shown for less time was caused by the same act that moves on: leaving a cell whose text cannot be read. */
const LEAST_SAID_MS = 1_000;

/** What the status line shows, and for how long. */
export function spokenLine(first: Said | undefined, clock: Clock): SpokenLine {
  const said = signal(first);
  const moved = signal('');
  let passing: { readonly said: Said; readonly at: number } | undefined;
  return {
    said,
    moved,
    clear: () => {
      said.value = undefined;
      moved.value = '';
    },
    speaking: {
      tellMoved: (words) => (moved.value = words),
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
