import { isUnitSymbol } from '#shared-calc/quantity/unit.ts';
import { unreachable } from '#shared-calc/result.ts';
import type { CheckFault } from '#shared-calc/rule/fault.ts';
import type { Called } from './called.ts';
import { sayOneOf, withArticle } from './say-kinds.ts';

type CountFault = Extract<CheckFault, { readonly kind: 'too-few' | 'too-many' }>;
type ArgumentFault = Extract<CheckFault, { readonly kind: 'wrong-argument' }>;
type OptionFault = Extract<CheckFault, { readonly kind: 'not-an-option' }>;
type NameFault = Extract<CheckFault, { readonly kind: 'unknown-name' | 'unknown-function' | 'not-a-call' }>;
export type CallFault = NameFault | CountFault | ArgumentFault | OptionFault;

/** What is wrong with a name or with a function's argument: "DEPTH needs a length (mm, cm, in). You gave 40 L." */
export function sayCallFault(fault: CallFault, quoted: string, called: Called): string {
  switch (fault.kind) {
    case 'unknown-name':
      return sayUnknownName(fault.name, fault.near);
    case 'unknown-function':
      return `No function is called ${fault.name}.${meant(fault.near, ' Look in the Function book.')}`;
    case 'not-a-call':
      return `${fault.name} is a function; write its figures in brackets behind it, as in ${fault.name}(...).`;
    case 'too-few':
    case 'too-many':
      return `${fault.fn} takes ${sayCount(fault)}; you gave ${fault.given}.`;
    case 'wrong-argument':
      return sayArgument(fault, quoted, called);
    case 'not-an-option':
      return sayOption(fault);
    default:
      return unreachable(fault);
  }
}

function meant(near: string | undefined, otherwise: string): string {
  return near === undefined ? otherwise : ` Did you mean ${near}?`;
}

function sayUnknownName(name: string, near: string | undefined): string {
  if (isUnitSymbol(name)) return `${name} is a unit; it goes straight after a number, as in 12 ${name}.`;
  return `Nothing called ${name}.${meant(near, ' Look in the list of lines.')}`;
}

function sayCount({ least, most }: CountFault): string {
  if (most === undefined) return `at least ${least} ${least === 1 ? 'figure' : 'figures'}`;
  const figures = `${most === 0 ? 'no' : most} ${most === 1 ? 'figure' : 'figures'}`;
  return least === most ? figures : `${least} to ${figures}`;
}

function sayArgument(fault: ArgumentFault, quoted: string, called: Called): string {
  const given = /^[-+]?[\d.]/.test(quoted) ? quoted : `${quoted}, ${sayOneOf(fault.given)}`;
  return `${called.argument(fault.fn, fault.argument)} needs ${sayWanted(fault)}. You gave ${given}.`;
}

function sayWanted({ wanted, wantedUnits }: ArgumentFault): string {
  if (wanted === 'choice') return `one of ${wantedUnits}`;
  return wantedUnits === '' ? withArticle(wanted) : `${withArticle(wanted)} (${wantedUnits})`;
}

function sayOption({ text, options, near }: OptionFault): string {
  const cure = near === undefined ? '' : ` Did you mean "${near}"?`;
  return `"${text}" is none of the choices ${options.map((word) => `"${word}"`).join(', ')}.${cure}`;
}
