import { unreachable } from '#shared-calc/result.ts';
import { sumOfSign } from './sum-of-sign.ts';
import { literalBase, ungrouped, type Rule, type RulePart } from './tree.ts';

type AddressOf = (name: string) => string;

/** General functions that the engine's own work exactly as ours do. */
const engineOwn: Readonly<Record<string, string>> = {
  abs: 'ABS',
  min: 'MIN',
  max: 'MAX',
  sum: 'SUM',
  if: 'IF',
  and: 'AND',
  or: 'OR',
  not: 'NOT',
};

/**
 * A rule as the engine's text, without the leading sign: figures in base units, comparisons and powers as calls.
 * Brackets stand wherever + - * / and a prefix meet in another order than school arithmetic reads them, and
 * nowhere else: the engine's reader gives out at some 150 brackets in brackets.
 */
export function emitRule(rule: Rule, addressOf: AddressOf): string {
  switch (rule.part) {
    case 'number':
      return emitNumber(literalBase(rule));
    case 'text':
      return emitText(rule.text);
    case 'yes_no':
      return rule.value ? 'TRUE()' : 'FALSE()';
    case 'name':
      return addressOf(rule.name);
    case 'group':
      return emitRule(rule.of, addressOf);
    case 'prefix':
      return rule.sign + bracketed(rule.of, addressOf, isJoined(rule.of));
    case 'infix':
      return emitInfix(rule, addressOf);
    case 'call':
      return emitCall(rule, addressOf);
    default:
      return unreachable(rule);
  }
}

/** The engine reads `1e-9`, and `-5` only as a prefix before 5. */
function emitNumber(value: number): string {
  return value < 0 ? `(${value})` : String(value);
}

/** The engine knows no way to write a quote or a backslash inside a text. */
function emitText(text: string): string {
  if (!/["\\]/.test(text)) return `"${text}"`;
  const pieces = text
    .split(/(["\\])/)
    .map((piece, at) => (at % 2 === 1 ? `CHAR(${piece.charCodeAt(0)})` : `"${piece}"`));
  return `(${pieces.join('&')})`;
}

function emitInfix(rule: RulePart<'infix'>, addressOf: AddressOf): string {
  const { sign, left, right } = rule;
  const sum = sumOfSign(sign);
  if (sum) return `LW_${sum.toUpperCase()}(${emitRule(left, addressOf)},${emitRule(right, addressOf)})`;
  const tight = sign === '*' || sign === '/';
  const leftText = bracketed(left, addressOf, tight && isSum(left));
  return leftText + sign + bracketed(right, addressOf, tight ? isJoined(right) : isSum(right));
}

function bracketed(rule: Rule, addressOf: AddressOf, brackets: boolean): string {
  const text = emitRule(rule, addressOf);
  return brackets ? `(${text})` : text;
}

/** A part that reads as a + b or -a, so that a sign beside it would split it. */
function isSum(rule: Rule): boolean {
  const part = ungrouped(rule);
  return part.part === 'prefix' || (part.part === 'infix' && (part.sign === '+' || part.sign === '-'));
}

function isJoined(rule: Rule): boolean {
  const part = ungrouped(rule);
  return isSum(part) || (part.part === 'infix' && !sumOfSign(part.sign));
}

function emitCall(rule: RulePart<'call'>, addressOf: AddressOf): string {
  const args = rule.args.map((arg) => emitRule(arg, addressOf));
  if (rule.name === 'pick') return emitPick(args);
  // The engine's own has fifteen digits.
  if (rule.name === 'pi') return emitNumber(Math.PI);
  return `${engineOwn[rule.name] ?? `LW_${rule.name.toUpperCase()}`}(${args.join(',')})`;
}

/** The first `when` that is the same as the choice gives its figure; none is a refusal. */
function emitPick([choice = '', ...pairs]: readonly string[]): string {
  let text = '';
  let ends = '';
  for (let at = 0; at < pairs.length; at += 2) {
    text += `IF(LW_SAME(${choice},${pairs[at]}),${pairs[at + 1]},`;
    ends += ')';
  }
  return `${text}LW_NO_PICK()${ends}`;
}
