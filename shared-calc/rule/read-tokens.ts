import { tidyText } from '#shared-calc/quantity/read-figure.ts';
import { unitCalled } from '#shared-calc/quantity/unit-spellings.ts';
import { findUnit, isUnitSymbol, toBase, type Unit } from '#shared-calc/quantity/unit.ts';
import type { RuleFault } from './fault.ts';
import { nearUnit } from './near-unit.ts';
import type { Place, Sign } from './tree.ts';

/** A token of a rule; `bad` has the fault that the parser reports there, and the tokens after it still follow. */
export type Token = Place &
  (
    | { readonly is: 'number'; readonly value: number; readonly unit?: Unit }
    | { readonly is: 'text'; readonly text: string }
    | { readonly is: 'word'; readonly word: string }
    | { readonly is: 'sign'; readonly sign: Sign }
    | { readonly is: 'open' | 'close' | 'comma' | 'end' }
    | { readonly is: 'bad'; readonly fault: RuleFault }
  );

const spaces = /\s*/y;
const number = /(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?/y;
const quoted = /"((?:[^"]|"")*)"/y;
const word = /[\p{L}_][\p{L}\p{N}_]*/uy;
const unitWord = /fl oz\b|dry qt\b|F deg\b|°\s?[CF]|%|\p{L}[\p{L}\p{N}_]*/uy;
const signs = /<>|<=|>=|[=<>+\-*/^\u2212\u00d7\u00f7\u2264\u2265\u2260]/y;

/** Every operator as it may be written, also in characters that a keyboard or a paste may bring. */
const signOf: Readonly<Record<string, Sign>> = {
  '+': '+',
  '-': '-',
  '*': '*',
  '/': '/',
  '^': '^',
  '=': '=',
  '<>': '<>',
  '<': '<',
  '<=': '<=',
  '>': '>',
  '>=': '>=',
  '\u2212': '-',
  '\u00d7': '*',
  '\u00f7': '/',
  '\u2264': '<=',
  '\u2265': '>=',
  '\u2260': '<>',
};

const brackets: Readonly<Record<string, 'open' | 'close' | 'comma'>> = {
  '(': 'open',
  ')': 'close',
  ',': 'comma',
  ';': 'comma',
};

/** Splits a rule's text into tokens with places. Never fails: unreadable text is a `bad` token. */
export function readTokens(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = skipSpaces(text, 0);
  while (at < text.length) {
    const token = tokenAt(text, at);
    tokens.push(token);
    at = skipSpaces(text, token.to);
  }
  tokens.push({ is: 'end', from: text.length, to: text.length });
  return tokens;
}

/** The indices of the tokens that separate the arguments of functions: `,` or `;` inside brackets. */
export function commasInBrackets(tokens: readonly Token[]): readonly number[] {
  let depth = 0;
  return tokens.flatMap(({ is }, at) => {
    if (is === 'open') depth += 1;
    else if (is === 'close') depth -= 1;
    return is === 'comma' && depth > 0 ? [at] : [];
  });
}

function tokenAt(text: string, from: number): Token {
  const amount = match(number, text, from);
  if (amount !== undefined) return numberAt(text, from, amount);
  const name = match(word, text, from);
  if (name !== undefined) return { is: 'word', word: name, from, to: from + name.length };
  const written = match(signs, text, from) ?? '';
  const sign = signOf[written];
  if (sign !== undefined) return { is: 'sign', sign, from, to: from + written.length };
  if (text[from] === '"') return textAt(text, from);
  return markAt(text, from);
}

function markAt(text: string, from: number): Token {
  const found = String.fromCodePoint(text.codePointAt(from) ?? 0);
  const place = { from, to: from + found.length };
  const bracket = brackets[found];
  return bracket ? { is: bracket, ...place } : bad({ kind: 'bad-character', found, ...place });
}

/** A quote inside a text is doubled. */
function textAt(text: string, from: number): Token {
  const whole = match(quoted, text, from);
  if (whole === undefined) return bad({ kind: 'unclosed-text', from, to: text.length });
  return { is: 'text', text: whole.slice(1, -1).replaceAll('""', '"'), from, to: from + whole.length };
}

function numberAt(text: string, from: number, written: string): Token {
  const end = from + written.length;
  const value = Number(written);
  if (!Number.isFinite(value)) return bad({ kind: 'too-large', found: written, from, to: end });
  const first = unitWordAt(text, end);
  if (!first) return { is: 'number', value, from, to: end };
  // Right behind a number no line can stand, so that a spelling such as `feet` is a unit there.
  const called = unitCalled(first.symbol) ?? first.symbol;
  if (!isUnitSymbol(called)) {
    const near = nearUnit(first.symbol);
    return bad({ kind: 'unknown-unit', unit: first.word, ...(near && { near }), from: first.from, to: first.to });
  }
  const { symbol, to } = longestUnit(text, { ...first, symbol: called });
  const unit = findUnit(symbol);
  if (unit && !Number.isFinite(toBase(value, unit))) {
    return bad({ kind: 'too-large', found: text.slice(from, to), from, to });
  }
  return { is: 'number', value, ...(unit && { unit }), from, to };
}

interface UnitWord extends Place {
  readonly word: string;
  readonly symbol: string;
}

/** `12 min/m2` is one compound; in `12 L/drainage` the next word is not a unit, so the stroke divides. */
function longestUnit(text: string, first: UnitWord): { readonly symbol: string; readonly to: number } {
  let { symbol, to } = first;
  for (;;) {
    const joinAt = skipSpaces(text, to);
    const join = text[joinAt];
    if (join !== '/' && join !== '.') return { symbol, to };
    const next = unitWordAt(text, joinAt + 1);
    if (!next || !isUnitSymbol(next.symbol)) return { symbol, to };
    symbol += join + next.symbol;
    to = next.to;
  }
}

/** The word where a unit may be; none if a bracket follows it, as in `min(`. */
function unitWordAt(text: string, at: number): UnitWord | undefined {
  const from = skipSpaces(text, at);
  const found = match(unitWord, text, from);
  if (found === undefined) return undefined;
  const to = from + found.length;
  if (text[skipSpaces(text, to)] === '(') return undefined;
  return { word: found, symbol: tidyText(`1${found}`).slice(1), from, to };
}

function skipSpaces(text: string, at: number): number {
  return at + (match(spaces, text, at) ?? '').length;
}

function match(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

function bad(fault: RuleFault): Token {
  return { is: 'bad', fault, from: fault.from, to: fault.to };
}
