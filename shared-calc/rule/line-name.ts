import { isUnitSymbol } from '#shared-calc/quantity/unit.ts';
import { generalFunctions } from './general.ts';

const LINE_NAME_LENGTH = 60;

/** Why a name cannot be a line's name: facts, worded in words/say-name-fault.ts. */
export type LineNameFault =
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-long'; readonly name: string; readonly limit: number }
  | { readonly kind: 'bad-start'; readonly name: string }
  | { readonly kind: 'bad-letter'; readonly name: string; readonly found: string }
  | { readonly kind: 'is-unit' | 'is-function' | 'is-answer'; readonly name: string };

/** Whether a name is valid in a rule: lower case, a letter first, then letters, digits and `_`, at most 60. */
export function isLineName(name: string): boolean {
  return lineNameFault(name, new Map()) === undefined;
}

/** Why a name cannot be a line's name; `functions` are those of the trade, the general ones are known here. */
export function lineNameFault(name: string, functions: ReadonlyMap<string, unknown>): LineNameFault | undefined {
  return letterFault(name) ?? takenFault(name, functions);
}

function letterFault(name: string): LineNameFault | undefined {
  if (name === '') return { kind: 'empty' };
  if (name.length > LINE_NAME_LENGTH) return { kind: 'too-long', name, limit: LINE_NAME_LENGTH };
  const found = /[^a-z0-9_]/u.exec(name)?.[0];
  if (found !== undefined) return { kind: 'bad-letter', name, found };
  return /^[a-z]/.test(name) ? undefined : { kind: 'bad-start', name };
}

function takenFault(name: string, functions: ReadonlyMap<string, unknown>): LineNameFault | undefined {
  if (name === 'yes' || name === 'no') return { kind: 'is-answer', name };
  if (functions.has(name) || generalFunctions.has(name)) return { kind: 'is-function', name };
  return isUnitSymbol(name) ? { kind: 'is-unit', name } : undefined;
}
