/** One act of a view. Without `run` it is shown but disabled, and `hint` says why. */
export interface PlaceAct {
  readonly label: string;
  readonly main?: boolean;
  readonly hint?: string;
  readonly run?: () => void;
}

/** The status line at the foot. */
export interface QuietLineView {
  /** `Saved 14:02`, or what has been saving for more than a second. */
  readonly saved: string;
  /** Nothing is kept at present: why, and the act that helps. */
  readonly trouble?: { readonly says: string; readonly act?: PlaceAct };
  /** What *Undo* and *Redo* would revert or restore; absent if there is nothing. */
  readonly undo?: string;
  readonly redo?: string;
  /** What the last edit of the bench moved. */
  readonly moved?: string;
  /** The last message: a refusal with its cure, or what was done. */
  readonly said?: { readonly words: string; readonly refused: boolean };
}

export interface QuietLineActs {
  readonly undo: () => void;
  readonly redo: () => void;
}
