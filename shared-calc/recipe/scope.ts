import { kindOfUnit, type Kind } from '#shared-calc/quantity/kind.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { Signature } from '#shared-calc/rule/signature.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';

/** The names a rule may use: the lines of its recipe and the trade functions. */
export interface Scope {
  kindOfLine(name: string): Kind | undefined;
  readonly lineNames: readonly string[];
  readonly functions: ReadonlyMap<string, Signature>;
}

const functions: ReadonlyMap<string, Signature> = new Map(
  tradeFunctions.filter((each) => each.inRules).map((each) => [each.name, each]),
);

/** The scope of rules without lines: functions only. */
export const noLines: Scope = { kindOfLine: () => undefined, lineNames: [], functions };

export function scopeOf(lines: readonly Line[]): Scope {
  const kinds = new Map(lines.map((line) => [line.name, kindOfLine(line)]));
  return { kindOfLine: (name) => kinds.get(name), lineNames: [...kinds.keys()], functions };
}

/** The kind of a line, from its unit; a choice knows its words if the line lists them. */
export function kindOfLine(line: Line): Kind {
  if (line.unit === 'choice' && line.options) return { is: 'choice', options: line.options };
  return kindOfUnit(line.unit);
}
