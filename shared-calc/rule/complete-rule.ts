import { findUnit, unitSymbols } from '#shared-calc/quantity/unit.ts';
import type { Kind } from '#shared-calc/quantity/kind.ts';
import { argumentKind } from './check-call.ts';
import type { RuleScope } from './check-rule.ts';
import { generalFunctions } from './general.ts';
import { kindFits } from './kind-fits.ts';
import { readTokens, type Token } from './read-tokens.ts';

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

/** What is still being written while the cursor stands at its end. */
const written: ReadonlySet<Token['is']> = new Set(['word', 'number', 'text', 'bad']);

/** Offers lines and functions where a figure may stand, units after a number, and a choice's words in quotes. */
export function completeRule(text: string, cursor: number, scope: RuleScope): Completions {
  const tokens = readTokens(text);
  const at = tokens.findIndex((token) => token.to >= cursor && token.is !== 'end');
  const here = tokens[at];
  const inside = here && here.from < cursor && written.has(here.is) ? here : undefined;
  const before = tokens.filter((token) => token.to <= cursor && token !== inside && token.is !== 'end');
  const spot: Spot = { text, cursor, before, scope, call: openCall(before) };
  if (inside && isQuoted(inside)) return completeWord(spot, inside);
  return completeUnit(spot, inside) ?? completeFigure(spot, inside);
}

interface Spot {
  readonly text: string;
  readonly cursor: number;
  /** The words that end before the one at the cursor. */
  readonly before: readonly Token[];
  readonly scope: RuleScope;
  readonly call: OpenCall | undefined;
}

interface OpenCall {
  readonly fn: string;
  readonly argument: number;
  /** The first word of the call, which is what `pick` chooses by. */
  readonly first: Token | undefined;
}

function nothing(cursor: number): Completions {
  return { from: cursor, to: cursor, options: [] };
}

function isQuoted(token: Token): boolean {
  return token.is === 'text' || (token.is === 'bad' && token.fault.kind === 'unclosed-text');
}

/** The call whose brackets are open before the cursor, and which of its arguments is being written. */
function openCall(before: readonly Token[]): OpenCall | undefined {
  let argument = 0;
  let closed = 0;
  for (let at = before.length - 1; at > 0; at -= 1) {
    const token = before[at];
    if (token?.is === 'close') closed += 1;
    else if (token?.is === 'comma' && closed === 0) argument += 1;
    else if (token?.is === 'open' && closed > 0) closed -= 1;
    else if (token?.is === 'open') {
      const name = before[at - 1];
      return name?.is === 'word' ? { fn: name.word, argument, first: before[at + 1] } : undefined;
    }
  }
  return undefined;
}

function completeWord(spot: Spot, token: Token): Completions {
  const { text, cursor } = spot;
  const closed = token.is === 'text';
  const to = closed ? token.to : cursor;
  const typed = text.slice(token.from + 1, cursor);
  if (closed && cursor === token.to) return nothing(cursor);
  const words: readonly Completion[] = wordsWanted(spot).map((label) => ({
    is: 'word',
    text: `"${label.replaceAll('"', '""')}"`,
    label,
  }));
  return { from: token.from, to, options: bestFirst(words, typed) };
}

/** The words of the choice that a text stands beside: after `kit =`, as a `when` of pick, as a function's argument. */
function wordsWanted({ before, scope, call }: Spot): readonly string[] {
  const [left, sign] = before.slice(-2);
  if (sign?.is === 'sign' && left?.is === 'word') return optionsOf(scope.kindOfLine(left.word));
  if (!call || sign?.is === 'sign') return [];
  if (call.fn === 'pick' && call.argument % 2 === 1) {
    return call.first?.is === 'word' ? optionsOf(scope.kindOfLine(call.first.word)) : [];
  }
  return optionsOf(argumentWanted(scope, call));
}

function optionsOf(kind: Kind | undefined): readonly string[] {
  return kind?.is === 'choice' ? (kind.options ?? []) : [];
}

function argumentWanted(scope: RuleScope, call: OpenCall | undefined): Kind | undefined {
  const argument = call && scope.functions.get(call.fn)?.args[call.argument];
  const kind = argument && argumentKind(argument);
  return kind === 'any' ? undefined : kind;
}

/** After a number: a unit begun or not begun yet, also behind the stroke of a compound. */
function completeUnit(spot: Spot, inside: Token | undefined): Completions | undefined {
  const begun = /(?:^|[^\w.])(?:\d+(?:\.\d+)?|\.\d+)(\s*)((?:[^\s\d(),"<>=*+^-][^\s(),"<>=*+^-]*)?)$/u.exec(spot.text.slice(0, spot.cursor));
  if (!begun) return undefined;
  const [, space = '', typed = ''] = begun;
  if (space === '' && typed === '') return inside?.is === 'number' ? nothing(spot.cursor) : undefined;
  const stroke = Math.max(typed.lastIndexOf('/'), typed.lastIndexOf('.'));
  const [head, part] = [typed.slice(0, stroke + 1), typed.slice(stroke + 1)];
  if (head !== '' && !findUnit(head.slice(0, -1))) return undefined;
  const to = spot.cursor + (/^[\p{L}\p{N}_%]*/u.exec(spot.text.slice(spot.cursor))?.[0].length ?? 0);
  const units: readonly Completion[] = unitSymbols.map((label) => ({ is: 'unit', text: label, label }));
  const mayDivide = head.endsWith('/') ? figuresFor(spot) : [];
  return { from: spot.cursor - part.length, to, options: bestFirst([...units, ...mayDivide], part) };
}

function completeFigure(spot: Spot, inside: Token | undefined): Completions {
  const typed = inside?.is === 'word' ? spot.text.slice(inside.from, spot.cursor) : '';
  const last = spot.before.at(-1);
  const wantsFigure = !last || last.is === 'sign' || last.is === 'open' || last.is === 'comma';
  if (!wantsFigure || (inside && inside.is !== 'word' && inside.to > spot.cursor)) return nothing(spot.cursor);
  const [from, to] = inside?.is === 'word' ? [inside.from, inside.to] : [spot.cursor, spot.cursor];
  return { from, to, options: bestFirst(figuresFor(spot), typed) };
}

/** All that a figure may begin with; in a call, lines that fit its argument come first. */
function figuresFor(spot: Spot): readonly Completion[] {
  const wanted = argumentWanted(spot.scope, spot.call);
  const fits = (name: string) => {
    const kind = spot.scope.kindOfLine(name);
    return !wanted || !kind || kindFits(wanted, kind);
  };
  const { lineNames, functions } = spot.scope;
  const lines = [...lineNames.filter(fits), ...lineNames.filter((name) => !fits(name))];
  const calls = [...functions.keys(), ...generalFunctions.keys()];
  return [
    ...lines.map((name) => ({ is: 'line' as const, text: name, label: name })),
    ...calls.map((name) => ({ is: 'function' as const, text: `${name}(`, label: name })),
    ...['yes', 'no'].map((label) => ({ is: 'answer' as const, text: label, label })),
  ];
}

/** The very word, then what begins with the letters typed, what has a part that does, what has them anywhere. */
function bestFirst(all: readonly Completion[], typed: string): readonly Completion[] {
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
