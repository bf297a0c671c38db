import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { shownUnitWords } from '#shared-calc/quantity/figure-words.ts';

/** A line as the page shows it. */
export interface LineFace {
  readonly line: Line;
  readonly label: string;
  /** The unit its figures are shown in, in the core's spelling. */
  readonly shown: string;
  /** The same unit in the page's spelling; empty if it has none. */
  readonly unit: string;
}

/** The lines of a recipe as the page shows them, with the unit shown of each. */
export interface LineFaces {
  readonly display: Display;
  readonly lines: readonly Line[];
  readonly of: (name: string) => LineFace | undefined;
  /** The line that the program reads for a use. */
  readonly for: (use: UseName) => LineFace | undefined;
  readonly all: readonly LineFace[];
  /** Sections in order, each with its lines. */
  readonly sections: ReadonlyMap<string, readonly LineFace[]>;
}

export function lineFaces(lines: readonly Line[], display: Display): LineFaces {
  const all = lines.map((line) => ({
    line,
    label: lineLabel(line),
    shown: shownUnit(line.unit, display),
    unit: shownUnitWords(line.unit, display),
  }));
  const byName = new Map(all.map((face) => [face.line.name, face]));
  const of = (name: string | undefined) => byName.get(name ?? '');
  return {
    display,
    lines,
    of,
    for: (use) => of(lineFor(lines, use)?.name),
    all,
    sections: Map.groupBy(all, (face) => face.line.section),
  };
}

/** The faces of several lists of lines, made again where the display changed. */
export function facesByLines(): (lines: readonly Line[], display: Display) => LineFaces {
  const known = new WeakMap<readonly Line[], LineFaces>();
  return (lines, display) => {
    const before = known.get(lines);
    const faces = before?.display === display ? before : lineFaces(lines, display);
    known.set(lines, faces);
    return faces;
  };
}
