/** One act of a place; without `run` it is shown but cannot be done now, and `hint` says why. */
export interface PlaceAct {
  readonly label: string;
  readonly main?: boolean;
  readonly hint?: string;
  readonly run?: () => void;
}

/** The quiet line at the foot. */
export interface QuietLineView {
  /** `Saved 14:02`, or what takes longer than a second. */
  readonly saved: string;
  /** What *Undo* and *Redo* would take back or bring back; left out where there is nothing. */
  readonly undo?: string;
  readonly redo?: string;
  /** The last thing said: a refusal with its cure, or what was done. */
  readonly said?: { readonly words: string; readonly refused: boolean };
}

export interface QuietLineActs {
  readonly undo: () => void;
  readonly redo: () => void;
}
