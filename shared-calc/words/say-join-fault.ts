import { capital } from '#shared-calc/rule/capital.ts';
import { unreachable } from '#shared-calc/result.ts';
import type { CheckFault } from '#shared-calc/rule/fault.ts';
import { isPlainFigure, isReading } from '#shared-calc/rule/kind-fits.ts';
import { sayMeasures, sayOneOf } from './say-kinds.ts';

export type JoinFault = Extract<
  CheckFault,
  { readonly kind: 'cannot-join' | 'reading-alone' | 'bad-power' | 'bad-root' }
>;

/** Why two parts do not fit together under an operator: "Litres plus millimetres cannot be added." and the cure. */
export function sayJoinFault(fault: JoinFault, quoted: string): string {
  switch (fault.kind) {
    case 'cannot-join':
      return sayCannotJoin(fault, quoted);
    case 'reading-alone':
      return `${sayReading(fault.sign, quoted)} Take the difference of two temperatures, or a step in K.`;
    case 'bad-power':
      return `${quoted} cannot be a power here; a figure with a unit takes a whole number, as in ^ 2.`;
    case 'bad-root':
      return `${quoted} is ${sayOneOf(fault.given)} and has no square root; an area has one, a length.`;
    default:
      return unreachable(fault);
  }
}

function sayReading(sign: Extract<JoinFault, { readonly kind: 'reading-alone' }>['sign'], quoted: string): string {
  if (sign === 'sum') return `${quoted} is a temperature and cannot be added up.`;
  if (sign === 'abs') return `${quoted} is a temperature and has no size without its sign.`;
  if (sign === 'round_to') return `A temperature is rounded to a step; ${quoted} is a temperature itself.`;
  const acts = new Map<string, string>([
    ['*', 'multiplied'],
    ['/', 'divided'],
    ['^', 'raised to a power'],
  ]);
  const act = acts.get(sign) ?? 'turned round by a sign';
  return `${quoted} is a temperature and cannot be ${act}.`;
}

function sayCannotJoin(
  { sign, left, right }: Extract<JoinFault, { readonly kind: 'cannot-join' }>,
  quoted: string,
): string {
  const [first, second] = [sayMeasures(left), sayMeasures(right)];
  const cure = cureOf(left, right, sign, quoted);
  if (sign === '+') return `${capital(first)} plus ${second} cannot be added. ${cure}`;
  if (sign === '-') return `${capital(second)} cannot be taken from ${first}. ${cure}`;
  return `${capital(first)} cannot be compared with ${second}. ${cure}`;
}

type Kinds = Extract<JoinFault, { readonly kind: 'cannot-join' }>;

function cureOf(left: Kinds['left'], right: Kinds['right'], sign: Kinds['sign'], quoted: string): string {
  if (isPlainFigure(left) || isPlainFigure(right)) return `In ${quoted}, give the plain figure its unit.`;
  if (isReading(left) && isReading(right)) return `In ${quoted}, write a step in K, such as 2 K.`;
  if (isReading(left) || isReading(right)) return `In ${quoted}, a temperature is in degC and a step in K.`;
  if (left.is !== 'figure' && left.is === right.is) return `In ${quoted}, write = or <> for ${sign}.`;
  return `In ${quoted}, both sides must be of one kind.`;
}
