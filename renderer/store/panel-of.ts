import type { PanelView } from '#renderer/panel/panel-view.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { isGiven, restsOn, sourceOf, unsureAmong } from '#shared-calc/bench/rests-on.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { boxStanding, kindOfBox } from './box-words.ts';
import { rangedFigure } from './box-view.ts';
import { cautionsOf, standingsOf } from './box-causes.ts';
import type { BoxParts } from './box-view.ts';
import { entryText } from '#shared-calc/recipe/typed-text.ts';
import { boxFigure } from '#shared-calc/quantity/figure-words.ts';
import { sayRanges } from '#shared-calc/words/say-range.ts';
import { houseOf } from './house-value.ts';
import { openCheckOf } from './open-check.ts';
import type { LineFace, LineFaces } from './line-faces.ts';
import type { WorkedBench } from './worked-bench.ts';
import { putInView, sourcesOf } from './working-view.ts';

export interface PanelParts {
  readonly worked: WorkedBench;
  readonly column: BenchColumn;
  /** The cell the side panel shows. */
  readonly line: string;
  /** Lines stepped down from, nearest last. */
  readonly steppedFrom: readonly string[];
  readonly faces: LineFaces;
}

/** The side panel for one cell. */
export function panelOf(parts: PanelParts): PanelView | undefined {
  const { worked, column, line, faces, steppedFrom } = parts;
  const face = faces.of(line);
  if (!face || !worked.isWorked(column.key)) return undefined;
  const called = calledOf(column);
  const { issued } = worked.source();
  const boxParts: BoxParts = { bench: worked.bench(), column: column.key, called, faces, issued };
  const box = worked.bench().box(column.key, line);
  const putIn = putInView(box, boxParts);
  const house = houseOf(box, { worked, column, face, faces });
  const check = openCheckOf(box, boxParts);
  const ranges = sayRanges(worked.bench(), column.key, line, faces.display);
  return {
    id: `${line} ${column.key}`,
    where: [called, face.line.section, ...kindUnlessSaid(box)].join(', '),
    steppedFrom: steppedFrom.map((name) => faces.of(name)?.label ?? name),
    title: face.label,
    answer: answerOf(box, face, faces),
    nameInRules: line,
    standing: standingsOf(box, boxParts),
    ...(check && { check }),
    ranges,
    rule: { kind: ruleKind(box), text: entryText(box.text, faces.display), closed: issued !== undefined },
    ...(putIn && { putIn }),
    sources: sourcesOf(box, boxParts),
    ...fromOf(box, boxParts),
    rests: restsOf(parts),
    ...(house && { house }),
    cautions: cautionsOf(box, boxParts),
    ...noteOf(parts, issued !== undefined),
  };
}

/** Its kind, where its standing does not say it below. */
function kindUnlessSaid(box: Box): readonly string[] {
  const isSaid = box.line.role === 'check' || box.source === 'local' || box.source === 'job';
  return isSaid ? [] : [kindOfBox(box)];
}

/** Of a figure that house or animal kind give, or a rule with figures of its own. */
function fromOf(box: Box, { bench }: BoxParts): Pick<PanelView, 'from'> {
  if (box.source !== 'house' && box.source !== 'kind') return {};
  const from = sourceOf(bench, box);
  return isGiven(box) || from.source !== undefined ? { from } : {};
}

/** More than anybody reads; a recipe without sources has a hundred. */
const MOST_RESTS = 12;

function restsOf({ worked, column, line }: PanelParts): PanelView['rests'] {
  const { memory, unsaid } = unsureAmong(restsOn(worked.bench(), column.key, line));
  const others = [...memory, ...unsaid].filter((each) => each.line.name !== line);
  return {
    rows: others.slice(0, MOST_RESTS).map((each) => ({
      line: each.line.name,
      label: lineLabel(each.line),
      from: each.from,
    })),
    more: Math.max(0, others.length - MOST_RESTS),
  };
}

function answerOf(box: Box, { line, unit }: LineFace, faces: LineFaces): PanelView['answer'] {
  if (line.role === 'check' || box.value === undefined) return { figure: boxStanding(box, faces).said, unit: '' };
  return { figure: rangedFigure(box, faces.display) ?? boxFigure(box, line.unit, faces.display), unit };
}

function ruleKind(box: Box): 'Rule' | 'Figure' | 'Choice' {
  if (box.rule) return 'Rule';
  return box.line.unit === 'choice' || box.line.unit === 'yes_no' ? 'Choice' : 'Figure';
}

/** The note on an overridden cell; the house's own note cannot be edited here. */
function noteOf({ worked, column, line, faces }: PanelParts, closed: boolean): Pick<PanelView, 'note'> {
  const written = column.written.get(line) ?? worked.source().whole.get(line);
  if (written) return { note: { text: written.note, closed } };
  const text = faces.of(line)?.line.note ?? '';
  return text === '' ? {} : { note: { text, closed: true } };
}
