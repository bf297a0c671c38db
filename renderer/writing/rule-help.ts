/** What the core says of a text while it is written. */
export interface RuleCheck {
  readonly faults: readonly RuleFault[];
  /** Runs of the text to set apart, in order, never overlapping. */
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
  /** What it stands in for. */
  readonly from: number;
  readonly to: number;
  readonly insert: string;
  readonly kind: 'name' | 'function' | 'unit' | 'choice';
  /** In words; for a function how it is written. */
  readonly label: string;
  /** A name's present figure with its unit. */
  readonly figure: string;
}

/** The function the cursor is in: `clamp(figure, low, high)` and what it does. */
export interface RuleHint {
  readonly written: string;
  readonly says: string;
}

/** Help with one box's text; every call is quick enough for each key. */
export interface RuleHelp {
  readonly check: (text: string) => RuleCheck;
  readonly complete: (text: string, cursor: number) => readonly Completion[];
  readonly hint: (text: string, cursor: number) => RuleHint | undefined;
}
