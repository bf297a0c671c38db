import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { RuleFault, Wanted } from './fault.ts';
import { readTokens, type Token } from './read-tokens.ts';
import { ungrouped, type Place, type Rule, type Sign } from './tree.ts';

const RULE_LENGTH = 2000;
const RULE_LEVELS = 60;

/** Loosest first; operators of one row are left-associative. A prefix binds tighter than all of them. */
const ladder: readonly (readonly Sign[])[] = [['=', '<>', '<', '<=', '>', '>='], ['+', '-'], ['*', '/'], ['^']];

interface Reader {
  readonly text: string;
  readonly tokens: readonly Token[];
  at: number;
  fault: RuleFault | undefined;
}

/**
 * Parses a rule such as `soil_gross - edge_bead`: at most 2,000 characters and 60 levels of brackets, calls, prefixes
 * and chained powers or comparisons. Fails with the first fault in the text and its place.
 */
export function readRule(text: string): Result<Rule, RuleFault> {
  const refusal = refuseWhole(text);
  if (refusal) return failed(refusal);
  const reader: Reader = { text, tokens: readTokens(text), at: 0, fault: undefined };
  const rule = readRow(reader, 0, 0);
  if (rule && here(reader).is !== 'end') unexpected(reader, 'sign');
  if (rule && !reader.fault && levelsOf(rule) > RULE_LEVELS) tooDeep(reader, rule);
  if (reader.fault) return failed(reader.fault);
  return rule ? ok(rule) : failed({ kind: 'empty', from: 0, to: text.length });
}

function refuseWhole(text: string): RuleFault | undefined {
  const start = text.search(/\S/);
  if (start < 0) return { kind: 'empty', from: 0, to: text.length };
  if (text.length > RULE_LENGTH) {
    return { kind: 'too-long', length: text.length, limit: RULE_LENGTH, from: RULE_LENGTH, to: text.length };
  }
  return text[start] === '=' ? { kind: 'leading-equals', from: start, to: start + 1 } : undefined;
}

function readRow(reader: Reader, row: number, level: number): Rule | undefined {
  const rowSigns = ladder[row];
  if (!rowSigns) return readPrefix(reader, level);
  let left = readRow(reader, row + 1, level);
  while (left) {
    const token = here(reader);
    if (token.is !== 'sign' || !rowSigns.includes(token.sign)) return left;
    reader.at += 1;
    const right = readRow(reader, row + 1, level);
    left = right && { part: 'infix', sign: token.sign, left, right, from: left.from, to: right.to };
  }
  return left;
}

function readPrefix(reader: Reader, level: number): Rule | undefined {
  const token = here(reader);
  if (token.is !== 'sign' || (token.sign !== '+' && token.sign !== '-')) return readFigure(reader, level);
  if (level >= RULE_LEVELS) return tooDeep(reader, token);
  reader.at += 1;
  const of = readPrefix(reader, level + 1);
  return of && signed(token.sign, of, token.from);
}

/** A sign before a temperature reading is part of its figure: `-40 degF` is 40 below zero Fahrenheit. */
function signed(sign: '+' | '-', of: Rule, from: number): Rule {
  if (of.part === 'number' && of.unit?.zero !== undefined) {
    return { ...of, value: sign === '-' ? 0 - of.value : of.value, from };
  }
  return { part: 'prefix', sign, of, from, to: of.to };
}

function readFigure(reader: Reader, level: number): Rule | undefined {
  const token = here(reader);
  const { from, to } = token;
  switch (token.is) {
    case 'number':
      reader.at += 1;
      return { part: 'number', value: token.value, ...(token.unit && { unit: token.unit }), from, to };
    case 'text':
      reader.at += 1;
      return { part: 'text', text: token.text, from, to };
    case 'word':
      reader.at += 1;
      return readWord(reader, token.word, { from, to }, level);
    case 'open':
      return readGroup(reader, level);
    default:
      return unexpected(reader, 'figure');
  }
}

function readWord(reader: Reader, word: string, place: Place, level: number): Rule | undefined {
  if (here(reader).is === 'open') return readCall(reader, word, place, level);
  if (word === 'yes' || word === 'no') return { part: 'yes_no', value: word === 'yes', ...place };
  return { part: 'name', name: word, ...place };
}

function readGroup(reader: Reader, level: number): Rule | undefined {
  const open = here(reader);
  if (level >= RULE_LEVELS) return tooDeep(reader, open);
  reader.at += 1;
  const of = readRow(reader, 0, level + 1);
  if (!of) return undefined;
  const close = here(reader);
  if (close.is !== 'close') return unexpected(reader, 'close');
  reader.at += 1;
  return { part: 'group', of, from: open.from, to: close.to };
}

function readCall(reader: Reader, name: string, at: Place, level: number): Rule | undefined {
  if (level >= RULE_LEVELS) return tooDeep(reader, at);
  reader.at += 1;
  const args: Rule[] = [];
  while (args.length > 0 || here(reader).is !== 'close') {
    const arg = readRow(reader, 0, level + 1);
    if (!arg) return undefined;
    args.push(arg);
    if (here(reader).is === 'close') break;
    if (here(reader).is !== 'comma') return unexpected(reader, 'comma');
    reader.at += 1;
  }
  const { to } = here(reader);
  reader.at += 1;
  return { part: 'call', name, at, args, from: at.from, to };
}

function here(reader: Reader): Token {
  return reader.tokens[reader.at] ?? { is: 'end', from: reader.text.length, to: reader.text.length };
}

function unexpected(reader: Reader, wanted: Wanted): undefined {
  const token = here(reader);
  const { from, to } = token;
  if (token.is === 'bad') reader.fault ??= token.fault;
  else reader.fault ??= { kind: 'unexpected', found: reader.text.slice(from, to), wanted, from, to };
}

function tooDeep(reader: Reader, { from, to }: Place): undefined {
  reader.fault ??= { kind: 'too-deep', limit: RULE_LEVELS, from, to };
}

/** Levels as the engine nests them: sums and products are flat, each choice of `pick` adds a level. */
function levelsOf(rule: Rule): number {
  switch (rule.part) {
    case 'group':
      return 1 + levelsOf(ungrouped(rule.of));
    case 'prefix':
      return 1 + levelsOf(rule.of);
    case 'infix': {
      const flat = '+-*/'.includes(rule.sign);
      return Math.max(levelsOf(rule.left), levelsOf(rule.right)) + (flat ? 0 : 1);
    }
    case 'call': {
      const step = rule.name === 'pick' ? 0.5 : 0;
      return 1 + Math.max(0, ...rule.args.map((arg, at) => Math.floor(at * step) + levelsOf(arg)));
    }
    default:
      return 0;
  }
}
