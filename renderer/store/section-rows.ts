import type { LineRow, SectionRow } from '#renderer/bench/view-model.ts';
import type { LoudTotals } from './bench-scans.ts';
import { keepsOut, type Loud } from './column-scan.ts';
import type { PlaceUse } from '#shared-calc/jobs/place-checks.ts';
import { LIMITS, limitRow, limitRowId } from './limit-rows.ts';
import type { LineFace, LineFaces } from './line-faces.ts';

/** Which sections the user has opened or closed, and which show their hidden lines. */
export interface Folds {
  /** Sections that differ from their initial state. */
  readonly turned: ReadonlySet<string>;
  readonly all: ReadonlySet<string>;
}

export const noFolds: Folds = { turned: new Set(), all: new Set() };

/** Closed at first: rarely written in, and summed up by their headline. */
const closedAtFirst = new Set([
  'Tank',
  'Capping',
  'Hardscape and panel',
  'Hides',
  'Plants',
  'Microfauna',
  'Cover and air',
  'Mist and water',
  'Work',
  'Prepare',
  LIMITS,
]);

/** A section's key among rows; no line can have this name. */
export function sectionId(title: string): string {
  return `section ${title}`;
}

export function titleOfSection(id: string): string {
  return id.replace(/^section /, '');
}

export function isOpen(title: string, folds: Folds): boolean {
  return closedAtFirst.has(title) === folds.turned.has(title);
}

export function toggled(set: ReadonlySet<string>, name: string): ReadonlySet<string> {
  const next = new Set(set);
  if (!next.delete(name)) next.add(name);
  return next;
}

interface Rows {
  readonly faces: LineFaces;
  readonly totals: LoudTotals;
  readonly folds: Folds;
  /** Shown in muted type after a line's label. */
  readonly asideOf: (face: LineFace) => string;
}

/** The rows shown now: section heads, and the visible lines. */
export function sectionRows({ faces, totals, folds, asideOf }: Rows): readonly (SectionRow | LineRow)[] {
  return [...faces.sections].flatMap(([title, lines]) => {
    const open = isOpen(title, folds);
    const all = folds.all.has(title);
    const tucked = lines.filter((face) => isTucked(face, totals));
    const head: SectionRow = {
      kind: 'section',
      id: sectionId(title),
      title,
      open,
      more: open ? moreWords(tucked) : '',
      all,
      holds: open
        ? ''
        : holdsWords(
            lines.map(({ line }) => line.name),
            totals,
          ),
    };
    const out = open ? lines.filter((face) => all || !tucked.includes(face)) : [];
    return [head, ...out.map((face) => lineRow(face, asideOf(face)))];
  });
}

interface LimitRows extends Pick<Rows, 'totals' | 'folds'> {
  /** The limits that any size has, in order. */
  readonly uses: readonly PlaceUse[];
}

/** The limits of the place below the lines; none for a recipe alone. */
export function limitRows({ uses, totals, folds }: LimitRows): readonly (SectionRow | LineRow)[] {
  if (uses.length === 0) return [];
  const open = isOpen(LIMITS, folds);
  const all = folds.all.has(LIMITS);
  const tucked = uses.filter((use) => !isLoud(limitRowId(use), totals, true));
  const head: SectionRow = {
    kind: 'section',
    id: sectionId(LIMITS),
    title: LIMITS,
    open,
    more: open && tucked.length > 0 ? `${tucked.length} more hold` : '',
    all,
    holds: open ? '' : holdsWords(uses.map(limitRowId), totals),
  };
  return [head, ...(open ? uses.filter((use) => all || !tucked.includes(use)).map(limitRow) : [])];
}

function lineRow({ line, label, unit }: LineFace, aside: string): LineRow {
  return { kind: 'line', id: line.name, label, aside, unit, inset: line.inset };
}

function isTucked({ line }: LineFace, totals: LoudTotals): boolean {
  if (line.role === 'check') return !isLoud(line.name, totals, true);
  return !line.shownFirst && !isLoud(line.name, totals, false);
}

function isLoud(line: string, totals: LoudTotals, isCheck: boolean): boolean {
  for (const [loud, count] of totals.get(line) ?? []) if (count > 0 && keepsOut(loud, isCheck)) return true;
  return false;
}

function moreWords(tucked: readonly LineFace[]): string {
  if (tucked.length === 0) return '';
  return tucked.every(({ line }) => line.role === 'check') ? `${tucked.length} more hold` : `${tucked.length} more`;
}

/** In order of importance. */
const holdWords: readonly (readonly [Loud, string])[] = [
  ['stop', 'stop'],
  ['loop', 'depends on itself'],
  ['fault', 'without an answer'],
  ['range', 'out of range'],
  ['needs', 'needs a figure'],
  ['watch', 'watch'],
  ['unsure', 'may not hold'],
  ['unknown', 'not known yet'],
  ['local', 'local'],
  ['job', 'whole job'],
  ['old', 'old price'],
  ['advice', 'advice'],
];

/** What a closed section holds that must be visible: `1 local, 2 out of range`. */
function holdsWords(lines: readonly string[], totals: LoudTotals): string {
  const words: string[] = [];
  for (const [loud, says] of holdWords) {
    const count = lines.reduce((sum, line) => sum + (totals.get(line)?.get(loud) ?? 0), 0);
    if (count > 0) words.push(`${count} ${count > 1 && loud === 'needs' ? 'need a figure' : says}`);
  }
  return words.join(', ');
}
