import type { Rule } from '#shared-calc/rule/tree.ts';

export type Figure = number | string | boolean;

/** The content of one cell of the engine, figures in coherent base units. */
export type BoxContent =
  | { readonly is: 'figure'; readonly value: Figure }
  | { readonly is: 'rule'; readonly rule: Rule }
  | { readonly is: 'nothing'; readonly why: 'missing' | 'loop' | 'faulty' };

/** Why a cell has no value: the first cause, and the line that has it. */
export interface BoxProblem {
  readonly why: 'missing' | 'loop' | 'faulty' | 'refused' | 'divided by zero' | 'no number';
  readonly line: string;
  /** The function's own sentence, if it refused. */
  readonly says?: string;
}

export type BoxValue =
  | { readonly known: true; readonly value: Figure }
  | { readonly known: false; readonly problem: BoxProblem };
