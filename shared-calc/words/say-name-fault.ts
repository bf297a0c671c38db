import { unreachable } from '#shared-calc/result.ts';
import type { LineNameFault } from '#shared-calc/rule/line-name.ts';

/** Why a name cannot be a line's name, and what to do, in one sentence. */
export function sayNameFault(fault: LineNameFault): string {
  switch (fault.kind) {
    case 'empty':
      return 'A line needs a name, such as drain_gap.';
    case 'too-long':
      return `A name has at most ${fault.limit} letters; ${fault.name.slice(0, 20)}... has ${fault.name.length}.`;
    case 'bad-start':
      return `${fault.name} must begin with a letter.`;
    case 'bad-letter':
      return `${fault.name} has ${sayLetter(fault.found)} in it; names are small letters a to z, digits and _.`;
    case 'is-unit':
      return `${fault.name} is a unit; choose a longer name.`;
    case 'is-function':
      return `${fault.name} is a function; choose another name.`;
    case 'is-answer':
      return `${fault.name} is an answer in rules; choose another name.`;
    default:
      return unreachable(fault);
  }
}

function sayLetter(found: string): string {
  if (found === ' ') return 'a space';
  return found === '-' ? 'a hyphen' : found;
}
