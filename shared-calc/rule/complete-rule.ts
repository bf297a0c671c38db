import type { RuleScope } from './check-rule.ts';
import { completeFigure } from './complete-figure.ts';
import { completeUnit } from './complete-unit.ts';
import { completeWord, isQuoted } from './complete-word.ts';
import type { Completions, Spot } from './completion.ts';
import { findOpenCall } from './open-call.ts';
import { readTokens, type Token } from './read-tokens.ts';

/** What is still being written while the cursor stands at its end. */
const stillWritten: ReadonlySet<Token['is']> = new Set(['word', 'number', 'text', 'bad']);

/** Offers lines and functions where a figure may stand, units after a number, and a choice's words in quotes. */
export function completeRule(text: string, cursor: number, scope: RuleScope): Completions {
  const tokens = readTokens(text).slice(0, -1);
  const here = tokens.find((token) => token.to >= cursor);
  const inside = here && here.from < cursor && stillWritten.has(here.is) ? here : undefined;
  const before = tokens.filter((token) => token.to <= cursor && token !== inside);
  const spot: Spot = { text, cursor, inside, before, scope, call: findOpenCall(before) };
  if (inside && isQuoted(inside)) return completeWord(spot, inside);
  return completeUnit(spot) ?? completeFigure(spot);
}
