import { isUnitSymbol } from '#shared-calc/quantity/unit.ts';
import { unreachable } from '#shared-calc/result.ts';
import type { CheckFault, ReadFault, RuleFault } from '#shared-calc/rule/fault.ts';
import { sayJoinFault } from './say-join-fault.ts';
import { sayMeasures, sayOneOf, withArticle } from './say-kinds.ts';
import { sayReadFault } from './say-read-fault.ts';

/**
 * A fault of a rule in words: what is wrong, where, and the cure. `text` is the rule as it was written, from which
 * the place is quoted: "DEPTH needs a length (mm, cm, in). You gave 40 L."
 */
export function sayRuleFault(fault: RuleFault, text: string): string {
  return isReadFault(fault) ? sayReadFault(fault) : sayCheckFault(fault, text.slice(fault.from, fault.to).trim());
}

const readKinds: ReadonlySet<string> = new Set<ReadFault['kind']>([
  'empty',
  'too-long',
  'too-deep',
  'too-large',
  'unexpected',
  'bad-character',
  'unclosed-text',
  'leading-equals',
  'unknown-unit',
]);

function isReadFault(fault: ReadFault | CheckFault): fault is ReadFault {
  return readKinds.has(fault.kind);
}

function sayCheckFault(fault: CheckFault, quoted: string): string {
  switch (fault.kind) {
    case 'unknown-name':
      return sayUnknownName(fault.name, fault.near);
    case 'unknown-function':
      return `No function is called ${fault.name}.${fault.near ? ` Did you mean ${fault.near}?` : ' Look in the Function book.'}`;
    case 'not-a-call':
      return `${fault.name} is a function; write its figures in brackets behind it, as in ${fault.name}(...).`;
    case 'too-few':
    case 'too-many':
      return sayCount(fault);
    case 'wrong-argument':
      return sayArgument(fault, quoted);
    case 'not-an-option':
      return sayOption(fault);
    case 'cannot-join':
    case 'reading-alone':
    case 'bad-power':
    case 'bad-root':
      return sayJoinFault(fault, quoted);
    default:
      return sayKindFault(fault, quoted);
  }
}

type KindFault = Extract<
  CheckFault,
  {
    readonly kind:
      | 'rounds-plain-only'
      | 'needs-plain'
      | 'needs-yes-no'
      | 'needs-figure'
      | 'branches-differ'
      | 'arguments-disagree'
      | 'wrong-kind-for-line';
  }
>;

function sayKindFault(fault: KindFault, quoted: string): string {
  switch (fault.kind) {
    case 'rounds-plain-only':
      return `${fault.fn} rounds plain figures; ${quoted} is ${sayOneOf(fault.given)}. Use round_to with a step, as in round_to(${quoted}, 5 mm).`;
    case 'needs-plain':
      return `${fault.fn} takes plain figures; ${quoted} is ${sayOneOf(fault.given)}. Divide it by one of its unit first.`;
    case 'needs-yes-no':
      return `${fault.fn ?? 'This'} asks for a yes or no, such as drainage > 40 mm. You gave ${quoted}, ${sayOneOf(fault.given)}.`;
    case 'needs-figure':
      return `${fault.fn ?? 'This'} works with figures. ${quoted} is ${sayOneOf(fault.given)}; use if(...) or pick(...) to turn it into one.`;
    case 'branches-differ':
      return `${fault.fn} needs figures of one kind, not ${sayMeasures(fault.left)} with ${sayMeasures(fault.right)}. Change ${quoted}.`;
    case 'arguments-disagree':
      return `${fault.fn} cannot work with ${fault.given.map(sayMeasures).join(' and ')} together. Look it up in the Function book.`;
    case 'wrong-kind-for-line':
      return `This line is ${sayOneOf(fault.wanted)} in ${fault.unit}. ${quoted} is ${sayOneOf(fault.given)}.`;
    default:
      return unreachable(fault);
  }
}

function sayUnknownName(name: string, near: string | undefined): string {
  if (isUnitSymbol(name)) return `${name} is a unit; it goes straight after a number, as in 12 ${name}.`;
  return `Nothing called ${name}.${near === undefined ? ' Look in the list of lines.' : ` Did you mean ${near}?`}`;
}

function sayCount({ fn, given, least, most }: Extract<CheckFault, { readonly kind: 'too-few' | 'too-many' }>): string {
  const figures = (count: number) => `${count} ${count === 1 ? 'figure' : 'figures'}`;
  const takes =
    most === undefined ? `at least ${figures(least)}` : least === most ? figures(most) : `${least} to ${figures(most)}`;
  return `${fn} takes ${takes === '0 figures' ? 'no figures' : takes}; you gave ${given}.`;
}

function sayArgument(fault: Extract<CheckFault, { readonly kind: 'wrong-argument' }>, quoted: string): string {
  const wanted = fault.wanted === 'choice' ? 'one of' : withArticle(fault.wanted);
  const units = fault.wanted === 'choice' ? ` ${fault.wantedUnits}` : fault.wantedUnits && ` (${fault.wantedUnits})`;
  const given = /^[-+]?[\d.]/.test(quoted) ? quoted : `${quoted}, ${sayOneOf(fault.given)}`;
  return `${fault.argument.toUpperCase()} needs ${wanted}${units}. You gave ${given}.`;
}

function sayOption({ text, options, near }: Extract<CheckFault, { readonly kind: 'not-an-option' }>): string {
  const cure = near === undefined ? '' : ` Did you mean "${near}"?`;
  return `"${text}" is none of the choices ${options.map((word) => `"${word}"`).join(', ')}.${cure}`;
}
