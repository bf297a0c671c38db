import type { Kind } from '#shared-calc/quantity/kind.ts';
import { kindOfUnit } from '#shared-calc/quantity/kind.ts';
import type { RuleFault } from './fault.ts';
import { kindFits } from './kind-fits.ts';
import type { Place } from './tree.ts';

/** The fault of a rule whose kind does not fit a line of this unit: `40 L` on a line in mm. */
export function checkLineKind(rule: Place, given: Kind, unit: string): RuleFault | undefined {
  const wanted = kindOfUnit(unit);
  if (kindFits(wanted, given)) return undefined;
  return { kind: 'wrong-kind-for-line', wanted, unit, given, from: rule.from, to: rule.to };
}
