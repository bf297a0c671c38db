import { useNames, useOf, type UseName } from '#shared-calc/fields/uses.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { lineById, linesOf } from '#shared-calc/recipe/lines-of.ts';
import { kindOfUnit, sayKind } from '#shared-calc/quantity/kind.ts';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { linesWritten } from './line-changes.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

export interface UseFault {
  readonly kind: 'use-of-another-kind';
  readonly use: UseName;
  readonly line: string;
  /** The kind's name, from `kindsOf` of quantity. */
  readonly wanted: string;
  readonly given: string;
}

export interface MoveUse {
  readonly line: string;
  /** Left out: the line loses its use. */
  readonly use?: UseName | undefined;
}

/** Gives a use to a line; the line of the recipe that had the use loses it. */
export function moveUse({ records }: Pick<Derived, 'records'>, input: MoveUse): Result<Change, UseFault> {
  const to = lineById(records, input.line);
  if (!to || to.use === input.use) return ok(emptyChange('use of a line'));
  const { use } = input;
  if (use === undefined) return ok(linesWritten(records, `${to.name} is read for nothing`, [withUse(to, undefined)]));
  const [wanted, given] = [useOf(use).unit, to.unit].map((unit) => sayKind(kindOfUnit(unit)));
  if (wanted !== given) {
    return failed({ kind: 'use-of-another-kind', use, line: to.name, wanted: wanted ?? '', given: given ?? '' });
  }
  const from = linesOf(records, to.recipe).find((line) => line.use === use);
  const label = `${to.name} read for ${useOf(use).what.toLowerCase()}`;
  return ok(linesWritten(records, label, [...(from ? [withUse(from, undefined)] : []), withUse(to, use)]));
}

/** The uses that a line may have by its kind. */
export function usesFor({ unit }: Pick<Line, 'unit'>): readonly UseName[] {
  const kind = sayKind(kindOfUnit(unit));
  return useNames.filter((use) => sayKind(kindOfUnit(useOf(use).unit)) === kind);
}

function withUse(from: Line, use: UseName | undefined): Line {
  const { use: _, ...line } = from;
  return use === undefined ? line : { ...line, use };
}
