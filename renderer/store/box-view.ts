import type { BoxView } from '#renderer/bench/view-model.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { unsureWords } from '#shared-calc/bench/check-state.ts';
import { checkOf } from '#shared-calc/bench/checks.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { checksOn, rangeWords } from '#shared-calc/bench/range-words.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { showValue, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { boxStanding, spokenState, type BoxStanding } from './box-words.ts';
import { shortCheck } from './check-words.ts';
import { entryText } from '#shared-calc/recipe/typed-text.ts';
import { boxFigure, figureWords, readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { LineFace, LineFaces } from './line-faces.ts';

export interface BoxParts {
  readonly bench: Bench;
  readonly column: string;
  /** The column's label. */
  readonly called: string;
  readonly faces: LineFaces;
  readonly issued: string | undefined;
  /** The unit that its row says; its own unit stands behind a figure that has another. Left out: its own. */
  readonly rowUnit?: string | undefined;
}

/** A cell of a line that the recipe of its size does not have. */
export function absentView({ label }: Pick<LineFace, 'label'>, called: string, recipe: string): BoxView {
  const said = `not in ${recipe}`;
  const closedBy = {
    is: 'not in the recipe of its size',
    why: `${label} is not in recipe ${recipe}, which ${called} is built by.`,
  };
  const empty = { figure: '', entry: '', copied: '' };
  return {
    form: 'flat',
    source: 'house',
    look: 'plain',
    said,
    spoken: `${label}, ${called}, ${said}`,
    ...empty,
    closed: true,
    closedBy,
  };
}

/** A line's cell as it is painted and read out. */
export function boxView(face: LineFace, parts: BoxParts): BoxView {
  const { bench, column, faces, issued } = parts;
  const box = bench.box(column, face.line.name);
  const before = boxStanding(box, faces);
  const standing = withCheck(withIssued(before, issued), checkSign(box, parts));
  const isCheck = face.line.role === 'check';
  const figure = isCheck ? checkFigure(box, parts) : withUnit(figureOf(box, face, faces.display), face, parts);
  const sentence = isCheck && isOpenCheck(box) ? checkSentence(box, parts) : '';
  return {
    form: isWell(box) ? 'well' : 'flat',
    source: box.source === 'job' || box.source === 'local' ? box.source : 'house',
    look: standing.look,
    ...(standing.sign && { sign: standing.sign }),
    said: standing.said,
    figure,
    spoken: spokenBox(face, parts, { box, state: spokenState(box, before, sentence) }),
    entry: entryText(box.text, faces.display),
    copied: copiedText(box, face, faces.display),
    closed: issued !== undefined,
  };
}

/** Gives a guessed figure the sign of the check that turns on it, unless it has a flag of its own. */
function withCheck(standing: BoxStanding, level: (typeof gravity)[number] | undefined): BoxStanding {
  return level === undefined || standing.look !== 'plain' ? standing : { ...standing, look: level, sign: level };
}

const gravity = ['stop', 'watch', 'advice'] as const;

/** The level of the gravest check that turns on a guessed figure and does not surely hold. */
function checkSign({ range, line }: Box, { bench, column }: BoxParts): (typeof gravity)[number] | undefined {
  if (typeof range !== 'object') return undefined;
  const checks = checksOn(bench.lines(column), line.name).map((name) => bench.box(column, name));
  const signs = checks.map(({ check, line: { level = 'watch' } }) => {
    if (check?.state === 'fails') return level;
    return check?.state === 'may not hold' ? 'watch' : undefined;
  });
  return gravity.find((each) => signs.includes(each));
}

/** Marks a cell of an issued quote as issued, unless it has a flag of its own. */
function withIssued(standing: BoxStanding, issued: string | undefined): BoxStanding {
  if (issued === undefined || standing.look !== 'plain') return standing;
  const said = [standing.said, `in quote ${issued}`].filter((words) => words !== '').join(', ');
  return { look: 'issued', sign: 'issued', said };
}

/** Whether a check fails or may not hold. */
export function isOpenCheck({ check }: Box): boolean {
  return check?.state === 'fails' || check?.state === 'may not hold';
}

/** The sentence of a check with its figures put in. */
export function checkSentence({ line }: Box, { bench, column, faces: { display } }: BoxParts): string {
  return readUnits(checkOf(bench, column, line, display)?.says ?? '', display);
}

/** A figure says its unit where its row says another. */
function withUnit(figure: string, { unit }: LineFace, { rowUnit = unit }: BoxParts): string {
  return figure === '' || rowUnit === unit ? figure : `${figure}\u00a0${unit}`.trimEnd();
}

function checkFigure(box: Box, parts: BoxParts): string {
  if (box.check?.state !== 'fails') return '';
  const rule = box.rule;
  return shortCheck(rule, box.line.says ?? '', parts.bench, parts);
}

function isWell({ line, source }: Box): boolean {
  return line.role === 'given' || source === 'job' || source === 'local';
}

/** A worked figure with no more decimals than its range bears; `undefined` if it has no range. */
export function rangedFigure({ value, rule, range, line }: Box, display: Display): string | undefined {
  if (typeof range !== 'object' || !rule || typeof value !== 'number') return undefined;
  return rangeWords({ value, range, unit: line.unit, side: 'both' }, display).likely;
}

/** `0` people to lift is written in words, as builders say it. */
function figureOf(box: Box, { line }: LineFace, display: Display): string {
  const { value, rule } = box;
  if (value === undefined) return '';
  const ranged = rangedFigure(box, display);
  if (ranged !== undefined) return ranged;
  if (value === 0 && rule?.part === 'call' && rule.name === 'lift_crew') return 'do not lift';
  return boxFigure({ value, rule }, line.unit, display);
}

function spokenBox(
  { label, line }: LineFace,
  { called, faces, issued }: BoxParts,
  { box, state }: { readonly box: Box; readonly state: string },
): string {
  const figure =
    box.value === undefined || line.role === 'check' ? '' : figureWords(box.value, line.unit, faces.display);
  const quote = issued === undefined ? '' : `in quote ${issued}`;
  return [label, called, figure, state, quote].filter((words) => words !== '').join(', ');
}

/** A local rule is copied as a rule. Everything else is copied as its full figure in the unit shown, without marks. */
function copiedText(box: Box, { line, shown }: LineFace, display: Display): string {
  const isWritten = box.source === 'local' || box.source === 'job';
  if (box.value === undefined || (isWritten && box.rule)) return box.text;
  const unsure = unsureWords(box);
  if (unsure !== undefined) return unsure;
  if (typeof box.value !== 'number') return showValue(box.value, line.unit, display);
  const figure = String(cleanNoise(fromBase(box.value, unitOf(shown))));
  return display.decimalComma ? figure.replace('.', ',') : figure;
}

/** Whether two cells are equal in every field. */
export function sameBoxView(one: BoxView | undefined, other: BoxView): boolean {
  return (
    one !== undefined &&
    one.figure === other.figure &&
    one.said === other.said &&
    one.spoken === other.spoken &&
    one.look === other.look &&
    sameWriting(one, other)
  );
}

function sameWriting(one: BoxView, other: BoxView): boolean {
  return (
    one.entry === other.entry &&
    one.copied === other.copied &&
    one.form === other.form &&
    one.source === other.source &&
    one.sign === other.sign &&
    one.closed === other.closed
  );
}
