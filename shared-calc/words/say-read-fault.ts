import { capital } from '#shared-calc/rule/capital.ts';
import type { ReadFault, Wanted } from '#shared-calc/rule/fault.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';

const sayings: Sayings<ReadFault> = {
  empty: () => 'There is no rule here yet; write a figure or a rule, such as 40 mm or soil_gross - edge_bead.',
  'too-long': ({ length, limit }) =>
    `The rule has ${length} characters; ${limit} is the most. Put part of it in a line of its own.`,
  'too-deep': ({ limit }) => `The rule goes more than ${limit} levels deep. Put part of it in a line of its own.`,
  'too-large': ({ found }) => `${found} is too large a number to work with.`,
  unexpected: ({ found, wanted }) => sayUnexpected(found, wanted),
  'bad-character': ({ found }) => sayCharacter(found),
  'two-figures': sayTwoFigures,
  'unclosed-text': () => 'The words in quotes are not closed; put a " behind the last of them.',
  'leading-equals': () => 'A rule has no = in front; leave it out.',
  'unknown-unit': ({ unit, near }) => sayUnit(unit, near),
};

/** Why a rule cannot be parsed, and the cure. */
export function sayReadFault(fault: ReadFault): string {
  return sayByKind(sayings, fault);
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
  if ((found === ',' || found === ';') && wanted !== 'figure') {
    return `A ${found === ',' ? 'comma' : found} parts the figures of a function; inside a rule the decimal sign is a point, as in 12.5 mm.`;
  }
  return `${capital(wants[wanted])} should stand where ${found} is.`;
}

/** `0.5,2` cannot be one figure; `1,5` can. */
function sayTwoFigures({ found, first, second }: Extract<ReadFault, { kind: 'two-figures' }>): string {
  const apart = `${first}; ${second}`;
  if (/\D/.test(found.replace(',', ''))) return `${found}: one figure, or two? Write ${apart} for two.`;
  const whole = found.replace(',', '.');
  return `${found}: ${whole}, or two figures? Write ${whole} or ${apart}.`;
}

const cures: Readonly<Record<string, string>> = {
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
