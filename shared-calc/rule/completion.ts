import type { RuleScope } from './check-rule.ts';
import type { OpenCall } from './open-call.ts';
import type { Token } from './read-tokens.ts';

export interface Completion {
  readonly is: 'line' | 'function' | 'unit' | 'word' | 'answer';
  /** The inserted text: a function with its opening bracket, a word with its missing quotes. */
  readonly text: string;
  /** The shown text: the name alone. */
  readonly label: string;
}

/** The options at the cursor, best first, and the range of text that any of them replaces. */
export interface Completions {
  readonly from: number;
  readonly to: number;
  readonly options: readonly Completion[];
}

/** The position of the cursor, and the text before it. */
export interface Spot {
  readonly text: string;
  readonly cursor: number;
  /** The token that is being typed at the cursor. */
  readonly inside: Token | undefined;
  /** The complete tokens before it. */
  readonly before: readonly Token[];
  readonly call: OpenCall | undefined;
  readonly scope: RuleScope;
}

export function noCompletions(cursor: number): Completions {
  return { from: cursor, to: cursor, options: [] };
}

/**
 * Exact matches first, then names that begin with the typed letters, then names with a part that does, then names that
 * contain them.
 */
export function bestFirst(all: readonly Completion[], typed: string): readonly Completion[] {
  const sought = typed.toLowerCase();
  return all
    .map((option) => ({ option, rank: rankOf(option.label, typed, sought) }))
    .filter(({ rank }) => rank < 5)
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ option }) => option);
}

function rankOf(label: string, typed: string, sought: string): number {
  if (label === typed) return 0;
  if (label.startsWith(typed)) return 1;
  const plain = label.toLowerCase();
  if (plain.startsWith(sought)) return 2;
  if (plain.includes(`_${sought}`)) return 3;
  return plain.includes(sought) ? 4 : 5;
}
