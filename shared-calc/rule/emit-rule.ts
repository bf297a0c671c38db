import { unreachable } from '#shared-calc/result.ts';
import { sumOfSign } from './sum-of-sign.ts';
import { literalBase, ungrouped, type Rule, type RulePart } from './tree.ts';

type AddressOf = (name: string) => string;

/** General functions whose engine version works exactly like ours. */
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
 * Brackets only where + - * / and a prefix meet in an order other than that of school arithmetic, as the engine's
 * parser fails at some 150 nested brackets.
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

/** The engine parses `1e-9`, and `-5` only as a prefix before 5. */
function emitNumber(value: number): string {
  return value < 0 ? `(${value})` : String(value);
}

/** The engine cannot escape a quote or a backslash inside a text. */
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

/** A part of the form a + b or -a, which an operator next to it would split. */
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
  // The engine's own pi has only fifteen digits.
  if (rule.name === 'pi') return emitNumber(Math.PI);
  return `${engineOwn[rule.name] ?? `LW_${rule.name.toUpperCase()}`}(${args.join(',')})`;
}

/** The figure of the first `when` that equals the choice; refused if there is none. */
function emitPick([choice = '', ...pairs]: readonly string[]): string {
  let text = '';
  let ends = '';
  for (let at = 0; at < pairs.length; at += 2) {
    text += `IF(LW_SAME(${choice},${pairs[at]}),${pairs[at + 1]},`;
    ends += ')';
  }
  return `${text}LW_NO_PICK()${ends}`;
}
