import type { Line } from '#shared-calc/records/records.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { ruleFunctions } from '#shared-calc/engine/rule-functions.ts';
import { plainUnitOf, type Kind } from '#shared-calc/quantity/kind.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { checkRule } from '#shared-calc/rule/check-rule.ts';
import { compileRule, type Lookups } from '#shared-calc/rule/evaluate-rule.ts';
import { ungrouped, type Rule, type RulePart } from '#shared-calc/rule/tree.ts';

/** By how much a check holds. */
export interface CheckMargin {
  /** The figure and its limit, in `unit`. */
  readonly has: number;
  readonly against: number;
  /** Room to spare, in `stepUnit`; below zero where the check does not hold. */
  readonly spare: number;
  readonly unit: string;
  /** The same as `unit`, but K if the figures are temperatures. */
  readonly stepUnit: string;
  /** The line of the figure, where it is one line. */
  readonly line?: string;
  /** The figure at the end of its range at which the check holds least. */
  readonly worst?: number;
}

/**
 * Of several comparisons that must all hold, the one with least room. `undefined` for a check that does not compare two
 * figures, or whose figures are not known yet.
 */
export function checkMargin(bench: Bench, column: string, check: string): CheckMargin | undefined {
  const { rule } = bench.box(column, check);
  const margins = (rule ? allOf(rule) : []).map((each) => marginIn(bench, column, each));
  if (margins.includes(undefined)) return undefined;
  return margins.reduce(
    (least, each) => (!least || (each && leastRoom(each) < leastRoom(least)) ? each : least),
    undefined,
  );
}

function allOf(rule: Rule): readonly Rule[] {
  const part = ungrouped(rule);
  return part.part === 'call' && part.name === 'and' ? part.args.flatMap(allOf) : [part];
}

/** Room to spare, at the worst where it is known. */
export function leastRoom({ has, spare, worst = has }: CheckMargin): number {
  return spare - Math.abs(has - worst);
}

function marginIn(bench: Bench, column: string, compared: Rule): CheckMargin | undefined {
  if (compared.part !== 'infix' || !/^[<>]=?$/.test(compared.sign)) return undefined;
  const kind = checkRule(compared.left, bench.scope(column)).kind;
  const lookups = lookupsOf(bench, column);
  const [has, against] = [compared.left, compared.right].map((side) => compileRule(side, lookups)());
  if (!kind || typeof has !== 'number' || typeof against !== 'number') return undefined;
  const margin = marginOf(
    compared,
    { has, against },
    { kind, unit: unitFor(compared.left, kind, bench.lines(column)) },
  );
  return { ...margin, ...ofOneLine(bench, column, compared) };
}

/** The line that is compared, with the end of its range that the comparison minds. */
function ofOneLine(
  bench: Bench,
  column: string,
  { left, sign }: RulePart<'infix'>,
): Pick<CheckMargin, 'line' | 'worst'> {
  const part = ungrouped(left);
  if (part.part !== 'name') return {};
  const { range, line } = bench.box(column, part.name);
  if (typeof range !== 'object') return { line: line.name };
  return { line: line.name, worst: fromBase(sign.startsWith('<') ? range.to : range.from, unitOf(line.unit)) };
}

interface Compared {
  readonly has: number;
  readonly against: number;
}

function marginOf(
  { sign }: RulePart<'infix'>,
  { has, against }: Compared,
  { kind, unit }: { readonly kind: Kind; readonly unit: string },
): CheckMargin {
  const stepUnit = kind.is === 'figure' && kind.sort === 'reading' ? 'K' : unit;
  const spare = sign.startsWith('<') ? against - has : has - against;
  return {
    has: fromBase(has, unitOf(unit)),
    against: fromBase(against, unitOf(unit)),
    spare: fromBase(spare, unitOf(stepUnit)),
    unit,
    stepUnit,
  };
}

/** The unit of the line if the side is one line, otherwise the plain unit of its kind. */
function unitFor(side: Rule, kind: Kind, lines: readonly Line[]): string {
  const part = ungrouped(side);
  const line = part.part === 'name' ? lines.find((each) => each.name === part.name) : undefined;
  return line?.unit ?? plainUnitOf(kind);
}

function lookupsOf(bench: Bench, column: string): Lookups {
  return {
    functions: ruleFunctions,
    valueOf: (name) => bench.box(column, name).value ?? { kind: 'missing', line: name },
  };
}
