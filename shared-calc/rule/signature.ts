import type { Kind } from '#shared-calc/quantity/kind.ts';

/** One argument of a function, as a rule may call it. */
export interface Argument {
  readonly name: string;
  /**
   * The unit the function works in (`mm`, `g/L`, `share`, `each`, `number`), `any` for any one dimension, `yes_no`, or
   * the words of a choice.
   */
  readonly takes: string | readonly string[];
  /** The default, in the argument's own unit; for a missing argument. */
  readonly otherwise?: number | string;
  /** Usual range in its own unit, shown in the Function book. */
  readonly low?: number;
  readonly high?: number;
  /** What the argument is, in a few words. */
  readonly says?: string;
}

/** What the rule language knows of a function: only what is needed to check a call. */
export interface Signature {
  readonly name: string;
  readonly args: readonly Argument[];
  /** Unit of the result, or how it follows from the kinds of the arguments. */
  readonly gives: string | ((args: readonly Kind[]) => Kind | undefined);
}
