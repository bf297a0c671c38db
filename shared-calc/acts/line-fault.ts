import { findCycle, readLines } from '#shared-calc/bench/find-cycle.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { findUnit, fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { noLines } from '#shared-calc/recipe/scope.ts';
import { findLooseReference } from '#shared-calc/records/references.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { withLines } from '#shared-calc/recipe/write-lines.ts';
import { added } from '#shared-calc/records/change.ts';
import { misfitOf } from '#shared-calc/records/misfit.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { lineNameFault } from '#shared-calc/rule/line-name.ts';
import type { ActFault } from './act-fault.ts';
import { breaksOf } from './line-breaks.ts';
import { familyFault } from './family-check.ts';
import { usesFor } from './move-use.ts';

/**
 * The first fault of a new or changed line: its name, unit, bounds, sentence, use or rate, or a rule that can no longer be
 * read.
 */
export function lineFault(records: Records, next: Line): ActFault | undefined {
  const lines = linesOf(records, next.recipe);
  return (
    nameFault(lines, next) ??
    figureFault(next) ??
    rangeFault(next) ??
    sentenceFault(lines, next) ??
    ruleFault(lines, next) ??
    useFault(next) ??
    useTaken(records, lines, next) ??
    misfitOf(added('line', next), records) ??
    findLooseReference(records, [{ kind: 'line', record: next }]) ??
    familyFault(records, withLines(records, next.recipe, { put: [next] }), next)
  );
}

/** Another line that a recipe inherits, or adds to what it inherits, has the use. */
function useTaken({ recipe }: Records, lines: readonly Line[], { id, use, recipe: of }: Line): ActFault | undefined {
  if (use === undefined || recipe.get(of)?.parent === undefined) return undefined;
  const other = lines.find((line) => line.use === use && line.id !== id);
  return other && { kind: 'use-taken', use, label: lineLabel(other) };
}

/** The fault of a line's name; a name that the line already has is not checked. */
export function nameFault(lines: readonly Line[], { id, name }: Line): ActFault | undefined {
  if (lines.find((line) => line.id === id)?.name === name) return undefined;
  const fault = lineNameFault(name, noLines.functions);
  if (fault) return { kind: 'bad-name', fault };
  return lines.some((line) => line.name === name && line.id !== id) ? { kind: 'name-taken', name } : undefined;
}

function figureFault({ unit, low, high }: Line): ActFault | undefined {
  if (unit !== 'choice' && unit !== 'yes_no' && !findUnit(unit)) return { kind: 'no-unit', unit };
  if (low !== undefined && high !== undefined && low > high) return { kind: 'bounds-crossed', low, high };
  return undefined;
}

/**
 * The fault of a guess's range: it must hold the likely figure, and lie within the bounds of *out of range*. Both ends
 * or none; only a figure has a range.
 */
export function rangeFault(line: Line): ActFault | undefined {
  const { name, text, unit, low = -Infinity, least, most, high = Infinity } = line;
  if (least === undefined && most === undefined) return undefined;
  const figure = readFigure(text, { unit });
  if (line.role !== 'given' || !figure.ok) return { kind: 'range-without-figure', line: name };
  if (least === undefined || most === undefined) return { kind: 'half-a-range', line: name };
  const likely = cleanNoise(fromBase(figure.value.value, unitOf(unit)));
  const order = [low, least, likely, most, high];
  if (order.every((each, at) => at === 0 || (order[at - 1] ?? 0) <= each)) return undefined;
  return { kind: 'range-crossed', line: name, unit, least, likely, most, low: line.low, high: line.high };
}

function useFault({ unit, use }: Line): ActFault | undefined {
  return use === undefined || usesFor({ unit }).includes(use) ? undefined : { kind: 'use-stays', use };
}

function sentenceFault(lines: readonly Line[], { name, says = '' }: Line): ActFault | undefined {
  const names = new Set([...lines.map((line) => line.name), name]);
  const unknown = [...says.matchAll(/\{(\w+)\}/g)].map(([, each = '']) => each).find((each) => !names.has(each));
  return unknown === undefined ? undefined : { kind: 'sentence-names-no-line', name: unknown };
}

function ruleFault(lines: readonly Line[], next: Line): ActFault | undefined {
  const before = lines.find((line) => line.id === next.id);
  const after = before ? lines.map((line) => (line === before ? next : line)) : [...lines, next];
  const breaks = breaksOf(lines, after);
  if (breaks.length > 0) return { kind: 'would-break', breaks };
  return before?.text === next.text ? undefined : ringFault(after, next);
}

/** The fault of a rule that reads its own line, directly or through other lines. */
export function ringFault(lines: readonly Line[], { name, text }: Line): ActFault | undefined {
  const cycle = findCycle(readLines(lines), (line) => (line.name === name ? text : line.text), [name]);
  return cycle && { kind: 'loop', line: name, text, cycle };
}
