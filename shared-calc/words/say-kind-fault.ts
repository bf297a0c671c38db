import { plainUnitOf, type Kind } from '#shared-calc/quantity/kind.ts';
import { unreachable } from '#shared-calc/result.ts';
import type { CheckFault } from '#shared-calc/rule/fault.ts';
import { sayMeasures, sayOneOf } from './say-kinds.ts';

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

/** What is wrong if a figure of another kind is expected. */
export function sayKindFault(fault: KindFault, quoted: string): string {
  switch (fault.kind) {
    case 'rounds-plain-only':
      return `${fault.fn} rounds plain figures; ${quoted} is ${sayOneOf(fault.given)}. Use round_to with a step, ${sayStep(quoted, fault.given)}.`;
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

/** The step in the plain unit of the figure: `round_to(soil_gross, 1 L)`. */
function sayStep(quoted: string, given: Kind): string {
  if (given.is === 'figure' && given.sort === 'reading') return `as in round_to(${quoted}, 1 K)`;
  return `as in round_to(${quoted}, 1 ${plainUnitOf(given) ?? 'mm'})`;
}
