import type { BoxProblem } from '#shared-calc/engine/box-content.ts';
import type { BoxSource, Giver } from '#shared-calc/recipe/column.ts';
import type { BoxFault } from '#shared-calc/recipe/read-box.ts';
import type { BoxRange } from './ranges.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { Rule } from '#shared-calc/rule/tree.ts';

/** Where a cell's value comes from, or why it has none. */
export type BoxState =
  | 'house'
  | 'always for this tank'
  | Giver
  | 'job'
  | 'local'
  | 'needs a figure'
  | 'waiting'
  | 'loop'
  | 'issued'
  | 'not in this recipe';
export type BoxFlag = 'out of range' | 'old price';

/** Why a cell has no value: facts, worded in words/say-box-cause.ts. */
export type BoxCause =
  | { readonly why: 'missing' }
  | { readonly why: 'faulty'; readonly fault: BoxFault }
  | { readonly why: 'loop'; readonly cycle: readonly string[] }
  | { readonly why: 'waits'; readonly problem: BoxProblem };

/** One cell of the size bench: a line of one size. */
export interface Box {
  readonly line: Line;
  readonly column: string;
  /** In coherent base units; a choice's word; yes or no; `undefined` if there is none. */
  readonly value: number | string | boolean | undefined;
  readonly source: BoxSource;
  /** The figure or rule as it was written. */
  readonly text: string;
  /** A person typed the text for this tank or job, so that it is shown as it stands. */
  readonly typed?: true;
  /** The parsed rule, if the text is a rule. */
  readonly rule?: Rule;
  readonly state: BoxState;
  readonly flags: readonly BoxFlag[];
  readonly cause?: BoxCause;
  /** Where guesses move its figure; `not known` if one of them leaves it without an answer. */
  readonly range?: BoxRange | 'not known';
  /** Of a check: what it comes to. */
  readonly check?: BoxCheck;
}

export interface BoxCheck {
  /** `not asked` where the range of a figure says it better. */
  readonly state: CheckState | 'not asked';
  /** Names of the probes in which it does not hold, or has no answer, though it holds at the likely figures. */
  readonly badIn: readonly string[];
}

export const checkStates = ['holds', 'may not hold', 'fails', 'not known yet'] as const;
/** A check that holds at the likely figures, but not where a guess is at its end, may not hold. */
export type CheckState = (typeof checkStates)[number];

export interface CheckResult {
  readonly line: Line;
  /** A check that may not hold is a watch, whatever its own level. */
  readonly level: 'advice' | 'watch' | 'stop';
  /** Only a check that holds counts as passed. */
  readonly state: CheckState;
  /** Names of the probes in which it does not hold, or has no answer, though it holds at the likely figures. */
  readonly badIn: readonly string[];
  /** The sentence with its figures filled in. */
  readonly says: string;
  readonly decides: string;
}
