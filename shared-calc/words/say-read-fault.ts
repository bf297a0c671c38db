import { capital } from '#shared-calc/rule/capital.ts';
import { unreachable } from '#shared-calc/result.ts';
import type { ReadFault, Wanted } from '#shared-calc/rule/fault.ts';

/** Why a rule cannot be parsed, and the cure. */
export function sayReadFault(fault: ReadFault): string {
  switch (fault.kind) {
    case 'empty':
      return 'There is no rule here yet; write a figure or a rule, such as 40 mm or soil_gross - edge_bead.';
    case 'too-long':
      return `The rule has ${fault.length} characters; ${fault.limit} is the most. Put part of it in a line of its own.`;
    case 'too-deep':
      return `The rule goes more than ${fault.limit} levels deep. Put part of it in a line of its own.`;
    case 'too-large':
      return `${fault.found} is too large a number to work with.`;
    case 'unexpected':
      return sayUnexpected(fault.found, fault.wanted);
    case 'bad-character':
      return sayCharacter(fault.found);
    case 'unclosed-text':
      return 'The words in quotes are not closed; put a " behind the last of them.';
    case 'leading-equals':
      return 'A rule has no = in front; leave it out.';
    case 'unknown-unit':
      return sayUnit(fault.unit, fault.near);
    default:
      return unreachable(fault);
  }
}

function sayUnit(unit: string, near: string | undefined): string {
  const cure = near ? `Did you mean ${near}?` : 'Put a sign such as * between a number and a name.';
  return `Nothing called ${unit} is a unit. ${cure}`;
}

const wants: Readonly<Record<Wanted, string>> = {
  figure: 'a figure, a line or a function',
  sign: 'a sign such as + or the end',
  close: 'a closing bracket',
  comma: 'a comma or a closing bracket',
};

function sayUnexpected(found: string, wanted: Wanted): string {
  if (found === '') return `The rule stops too early: ${wants[wanted]} is missing at the end.`;
  if (found === ')' && wanted === 'sign') return 'There is a closing bracket too many; take one out.';
  if (found === ',' && wanted !== 'figure') {
    return 'A comma parts the figures of a function; inside a rule the decimal sign is a point, as in 12.5 mm.';
  }
  return `${capital(wants[wanted])} should stand where ${found} is.`;
}

const cures: Readonly<Record<string, string>> = {
  ';': 'A comma parts the figures of a function; write , for ;',
  '%': '% goes straight after a number, as in 12 %',
  "'": 'Words go in double quotes, as in "full"',
  '\u201c': 'Words go in plain double quotes, as in "full"',
  '\u201d': 'Words go in plain double quotes, as in "full"',
  '!': 'Not the same is written <>, and the opposite of a yes or no is not(...)',
  '&': 'Two yes-or-no parts are joined by and(..., ...)',
  '|': 'Two yes-or-no parts are joined by or(..., ...)',
  '[': 'Only round brackets group the parts of a rule',
  ']': 'Only round brackets group the parts of a rule',
  '{': 'Only round brackets group the parts of a rule',
  '}': 'Only round brackets group the parts of a rule',
  $: 'Money is written after its figure, as in 12 money',
  '\u20ac': 'Money is written after its figure, as in 12 money',
  '\u00a3': 'Money is written after its figure, as in 12 money',
  '.': 'A point stands between digits only, as in 12.5 or .5',
};

function sayCharacter(found: string): string {
  return `${cures[found] ?? `${found} has no meaning in a rule; take it out`}.`;
}
