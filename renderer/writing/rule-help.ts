import type { Days } from '#renderer/kit/day-picker.tsx';

/** What the core reports about a text while it is being written. */
export interface RuleCheck {
  readonly faults: readonly RuleFault[];
  /** Marked ranges of the text, in order, never overlapping. */
  readonly marks: readonly RuleMark[];
}

export interface RuleFault {
  readonly from: number;
  readonly to: number;
  /** A sentence with its cure. */
  readonly says: string;
}

export interface RuleMark {
  readonly from: number;
  readonly to: number;
  readonly kind: 'function' | 'name' | 'choice';
}

export interface Completion {
  /** Start of the text it replaces. */
  readonly from: number;
  readonly to: number;
  readonly insert: string;
  readonly kind: 'name' | 'function' | 'unit' | 'choice';
  /** In words; for a function, how to write it. */
  readonly label: string;
  /** A name's current figure with its unit. */
  readonly figure: string;
}

/** The function at the cursor: `clamp(figure, low, high)` and what it does. */
export interface RuleHint {
  readonly written: string;
  readonly says: string;
}

/** Help with one cell's text; every call is fast enough to run on each key press. */
export interface RuleHelp {
  readonly check: (text: string) => RuleCheck;
  readonly complete: (text: string, cursor: number) => readonly Completion[];
  readonly hint: (text: string, cursor: number) => RuleHint | undefined;
  /** The text is a day: a calendar can be picked from. */
  readonly days?: Days;
}
