import type { RuleScope } from './check-rule.ts';
import type { OpenCall } from './open-call.ts';
import type { Token } from './read-tokens.ts';

export interface Completion {
  readonly is: 'line' | 'function' | 'unit' | 'word' | 'answer';
  /** What is put in: a function with its opening bracket, a word with the quotes it still needs. */
  readonly text: string;
  /** What is shown: the name alone. */
  readonly label: string;
}

/** What may come at the cursor, best first, and the stretch of text that any of it replaces. */
export interface Completions {
  readonly from: number;
  readonly to: number;
  readonly options: readonly Completion[];
}

/** Where the cursor stands, and what is written before it. */
export interface Spot {
  readonly text: string;
  readonly cursor: number;
  /** What is still being written at the cursor. */
  readonly inside: Token | undefined;
  /** The words that end before that. */
  readonly before: readonly Token[];
  readonly call: OpenCall | undefined;
  readonly scope: RuleScope;
}

export function noCompletions(cursor: number): Completions {
  return { from: cursor, to: cursor, options: [] };
}

/** The very word, then what begins with the letters typed, what has a part that does, what has them anywhere. */
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
