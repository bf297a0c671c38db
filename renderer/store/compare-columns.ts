import type { Box } from '#shared-calc/bench/bench-types.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { boxStanding } from './box-words.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import type { LineFace, LineFaces } from './line-faces.ts';
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
  faces: LineFaces,
  one: BenchColumn,
  other: BenchColumn,
): Comparison {
  const causes: Difference[] = [];
  const results: Difference[] = [];
  for (const face of faces.all) {
    const left = worked.bench().box(one.key, face.line.name);
    const right = worked.bench().box(other.key, face.line.name);
    const difference = differenceOf(face, faces, left, right);
    if (!difference) continue;
    if (difference.why === '') results.push(difference);
    else causes.push(difference);
  }
  return { causes, results };
}

function differenceOf(face: LineFace, faces: LineFaces, left: Box, right: Box): Difference | undefined {
  const one = shown(left, faces);
  const other = shown(right, faces);
  const sameText = left.text === right.text;
  if (one === other && (sameText || (left.source === 'tank' && right.source === 'tank'))) return undefined;
  const { line, label } = face;
  return { line: line.name, label, section: line.section, one, other, why: sameText ? '' : whyOf(left, right) };
}

function shown(box: Box, faces: LineFaces): string {
  if (box.line.role === 'check' || box.value === undefined) return boxStanding(box, faces).said;
  return figureWords(box.value, box.line.unit, faces.display);
}

function whyOf(left: Box, right: Box): string {
  if (left.source === right.source) return left.source === 'tank' ? 'measured' : `${sourceOf(left)} in both`;
  return `${sourceOf(left)} against ${sourceOf(right)}`;
}

function sourceOf({ source, rule }: Box): string {
  switch (source) {
    case 'local':
      return rule ? 'local rule' : 'local value';
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
