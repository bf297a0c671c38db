import type { RuleScope } from './check-rule.ts';
import { completeFigure, figuresFor } from './complete-figure.ts';
import { type Completions, type Spot, bestFirst, noCompletions, type Completion } from './completion.ts';
import { findOpenCall, argumentWanted, type OpenCall } from './open-call.ts';
import { readTokens, type Token } from './read-tokens.ts';
import { findUnit, unitSymbols } from '#shared-calc/quantity/unit.ts';
import type { Kind } from '#shared-calc/quantity/kind.ts';

/** Tokens that are still being typed while the cursor is at their end. */
const stillWritten: ReadonlySet<Token['is']> = new Set(['word', 'number', 'text', 'bad']);

/** Offers lines and functions where a figure may be, units after a number, and a choice's words in quotes. */
export function completeRule(text: string, cursor: number, scope: RuleScope): Completions {
  const tokens = readTokens(text).slice(0, -1);
  const here = tokens.find((token) => token.to >= cursor);
  const inside = here && here.from < cursor && stillWritten.has(here.is) ? here : undefined;
  const before = tokens.filter((token) => token.to <= cursor && token !== inside);
  const spot: Spot = { text, cursor, inside, before, scope, call: findOpenCall(before) };
  if (inside && isQuoted(inside)) return completeWord(spot, inside);
  return completeUnit(spot) ?? completeFigure(spot);
}

/** A number that is not the end of a name, with the text typed after it so far. */
const begun = /(?:^|[^\w.])(?:\d+(?:\.\d+)?|\.\d+)(\s*)((?:[^\s\d(),;"<>=*+^-][^\s(),;"<>=*+^-]*)?)$/u;

const restOfUnit = /^[\p{L}\p{N}_%]*/u;

const units: readonly Completion[] = unitSymbols.map((label) => ({ is: 'unit', text: label, label }));

/**
 * After a number: units, also after the stroke of a compound, where a line may follow as the divisor. `undefined` if
 * there is no number before the cursor.
 */
function completeUnit(spot: Spot): Completions | undefined {
  const { text, cursor, inside } = spot;
  const found = begun.exec(text.slice(0, cursor));
  if (!found) return undefined;
  const [, space = '', typed = ''] = found;
  if (space + typed !== '') return unitsBehind(spot, typed);
  return inside?.is === 'number' ? noCompletions(cursor) : undefined;
}

function unitsBehind(spot: Spot, typed: string): Completions | undefined {
  const stroke = Math.max(typed.lastIndexOf('/'), typed.lastIndexOf('.'));
  if (stroke >= 0 && !findUnit(typed.slice(0, stroke))) return undefined;
  const part = typed.slice(stroke + 1);
  const options = typed[stroke] === '/' ? [...units, ...figuresFor(spot)] : units;
  const rest = restOfUnit.exec(spot.text.slice(spot.cursor))?.[0] ?? '';
  return { from: spot.cursor - part.length, to: spot.cursor + rest.length, options: bestFirst(options, part) };
}

function isQuoted(token: Token): boolean {
  return token.is === 'text' || (token.is === 'bad' && token.fault.kind === 'unclosed-text');
}

/** Inside quotes: the words of the choice that the text is compared with. Adds the quotes that are missing. */
function completeWord(spot: Spot, quoted: Token): Completions {
  const closed = quoted.is === 'text';
  if (closed && spot.cursor === quoted.to) return noCompletions(spot.cursor);
  const typed = spot.text.slice(quoted.from + 1, spot.cursor);
  const words: readonly Completion[] = optionsOf(choiceBeside(spot)).map((label) => ({
    is: 'word',
    text: `"${label.replaceAll('"', '""')}"`,
    label,
  }));
  return { from: quoted.from, to: closed ? quoted.to : spot.cursor, options: bestFirst(words, typed) };
}

/** After `kit =` it is kit; in a `when` of pick it is pick's choice; otherwise what the function expects there. */
function choiceBeside({ before, scope, call }: Spot): Kind | undefined {
  const [left, sign] = before.slice(-2);
  if (sign?.is === 'sign') return left?.is === 'word' ? scope.kindOfLine(left.word) : undefined;
  if (call?.fn !== 'pick') return argumentWanted(scope.functions, call);
  const choice = choiceOfPick(call);
  return choice === undefined ? undefined : scope.kindOfLine(choice);
}

function choiceOfPick({ argument, first }: OpenCall): string | undefined {
  return argument % 2 === 1 && first?.is === 'word' ? first.word : undefined;
}

function optionsOf(kind: Kind | undefined): readonly string[] {
  return kind?.is === 'choice' ? (kind.options ?? []) : [];
}
