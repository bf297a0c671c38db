import type { Box } from '#shared-calc/bench/bench-types.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { boxStanding } from './box-words.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import type { LineFace, LineFaces } from './line-faces.ts';
import type { ShownBench } from './bench-view.ts';
import type { WorkedBench } from './worked-bench.ts';

/** One line that differs between two sizes. */
export interface Difference {
  readonly line: string;
  readonly label: string;
  readonly section: string;
  readonly one: string;
  readonly other: string;
  /** Who wrote the figure, if it is not the same house rule or figure. */
  readonly why: string;
}

export interface Comparison {
  /** Differences in measurements and in written values. */
  readonly causes: readonly Difference[];
  /** The differences that follow from the causes. */
  readonly results: readonly Difference[];
}

/** What differs between two sizes and why: measurements, local and chosen values first, then their results. */
export function compareColumns(
  worked: WorkedBench,
  shown: Pick<ShownBench, 'faces' | 'facesIn'>,
  one: BenchColumn,
  other: BenchColumn,
): Comparison {
  const causes: Difference[] = [];
  const results: Difference[] = [];
  const sides = [one, other].map((column) => ({ key: column.key, faces: shown.facesIn(column) }));
  for (const face of shown.faces().all) {
    const [left, right] = sides.map(({ key, faces }) => ({ faces, box: worked.bench().box(key, face.line.name) }));
    const difference = left && right && differenceOf(face, left, right);
    if (!difference) continue;
    if (difference.why === '') results.push(difference);
    else causes.push(difference);
  }
  return { causes, results };
}

interface Side {
  readonly faces: LineFaces;
  readonly box: Box;
}

function differenceOf(face: LineFace, left: Side, right: Side): Difference | undefined {
  const one = shownIn(left);
  const other = shownIn(right);
  const sameText = left.box.text === right.box.text;
  const isMeasured = left.box.source === 'tank' && right.box.source === 'tank';
  if (one === other && (sameText || isMeasured)) return undefined;
  const { line, label } = face;
  const why = sameText ? '' : whyOf(left.box, right.box);
  return { line: line.name, label, section: line.section, one, other, why };
}

function shownIn({ box, faces }: Side): string {
  if (isAbsent(box)) return box.state;
  if (box.line.role === 'check' || box.value === undefined) return boxStanding(box, faces).said;
  return figureWords(box.value, box.line.unit, faces.display);
}

function isAbsent({ state }: Box): boolean {
  return state === 'not in this recipe';
}

function whyOf(left: Box, right: Box): string {
  if (isAbsent(left) || isAbsent(right)) return isAbsent(left) && isAbsent(right) ? '' : 'in one recipe only';
  if (left.source === right.source) return left.source === 'tank' ? 'measured' : `${sourceOf(left)} in both`;
  return `${sourceOf(left)} against ${sourceOf(right)}`;
}

function sourceOf({ source, rule }: Box): string {
  switch (source) {
    case 'local':
      return rule ? 'local rule' : 'local figure';
    case 'job':
      return 'whole job';
    case 'tank':
      return 'tank book';
    case 'survey':
      return 'survey';
    case 'kind':
      return 'animal kind';
    case 'house':
      return rule ? 'house rule' : 'house figure';
  }
}
