import {
  isPlain,
  perDimension,
  powerOfDimension,
  timesDimension,
  sameDimension,
} from '#shared-calc/quantity/dimension.ts';
import { figureKind, YES_NO, type FigureKind, type Kind } from '#shared-calc/quantity/kind.ts';
import { checkWord, isWord } from './check-words.ts';
import type { CheckFault, RuleFault } from './fault.ts';
import { isPlainFigure, isReading, mixSorts, sameFigure, STEP } from './kind-fits.ts';
import { ungrouped, type Place, type Rule, type RulePart, type Sign } from './tree.ts';

export type Report = (fault: RuleFault) => void;

/** The kind of two parts under one operator; `undefined` if they do not fit together, which is reported. */
export function infixKind(
  part: RulePart<'infix'>,
  left: Kind | undefined,
  right: Kind | undefined,
  report: Report,
): Kind | undefined {
  switch (part.sign) {
    case '+':
    case '-':
      return withFigures(part, left, right, report)(sumKind);
    case '*':
    case '/':
      return withFigures(part, left, right, report)(productKind);
    case '^':
      return withFigures(part, left, right, report)(powerKind);
    default:
      compareKinds(part, left, right, report);
      return YES_NO;
  }
}

interface Joined {
  readonly part: RulePart<'infix'>;
  readonly left: FigureKind;
  readonly right: FigureKind;
  readonly fail: (fault: CheckFault, at?: Place) => undefined;
}

function withFigures(part: RulePart<'infix'>, left: Kind | undefined, right: Kind | undefined, report: Report) {
  const leftFigure = figureOf(part.left, left, report);
  const rightFigure = figureOf(part.right, right, report);
  const fail: Joined['fail'] = (fault, at = part) => {
    report({ ...fault, from: at.from, to: at.to });
  };
  return (join: (joined: Joined) => Kind | undefined) =>
    leftFigure && rightFigure ? join({ part, left: leftFigure, right: rightFigure, fail }) : undefined;
}

function figureOf(part: Rule, kind: Kind | undefined, report: Report): FigureKind | undefined {
  if (!kind || kind.is === 'figure') return kind;
  report({ kind: 'needs-figure', given: kind, from: part.from, to: part.to });
  return undefined;
}

/** temperature - temperature is a step; temperature and step give a temperature. */
function sumKind({ part, left, right, fail }: Joined): Kind | undefined {
  const minus = part.sign === '-';
  const joins = sameDimension(left.dimension, right.dimension);
  if (!joins) return fail({ kind: 'cannot-join', sign: part.sign, left, right });
  if (isReading(left) && isReading(right)) {
    return minus ? STEP : fail({ kind: 'cannot-join', sign: part.sign, left, right });
  }
  if (isReading(left)) return left;
  if (!isReading(right)) return mixSorts(left, right);
  return minus ? fail({ kind: 'cannot-join', sign: part.sign, left, right }) : right;
}

function productKind({ part, left, right, fail }: Joined): Kind | undefined {
  if (isReading(left)) return fail({ kind: 'reading-alone', sign: part.sign }, part.left);
  if (isReading(right)) return fail({ kind: 'reading-alone', sign: part.sign }, part.right);
  const divides = part.sign === '/';
  const joined = (divides ? perDimension : timesDimension)(left.dimension, right.dimension);
  const keepsSort = !divides && isPlain(joined) && left.sort === right.sort;
  return figureKind(joined, keepsSort ? left.sort : 'number');
}

/** A figure with a unit needs a literal whole number as its power; a plain figure accepts any plain power. */
function powerKind({ part, left, right, fail }: Joined): Kind | undefined {
  if (isReading(left)) return fail({ kind: 'reading-alone', sign: '^' }, part.left);
  const made = raisedKind(left, right, part.right);
  return made ?? fail({ kind: 'bad-power' }, part.right);
}

/** The kind of a base under a power, shared by `^` and `power()`. */
export function raisedKind(base: FigureKind, power: FigureKind, written: Rule): Kind | undefined {
  if (!isPlainFigure(power)) return undefined;
  if (isPlain(base.dimension)) return figureKind(base.dimension);
  const whole = wholeLiteral(written);
  const raised = whole === undefined ? undefined : powerOfDimension(base.dimension, whole);
  return raised && figureKind(raised);
}

function wholeLiteral(written: Rule): number | undefined {
  const part = ungrouped(written);
  if (part.part === 'prefix') {
    const inner = wholeLiteral(part.of);
    return inner === undefined || part.sign === '+' ? inner : 0 - inner;
  }
  return part.part === 'number' && !part.unit && Number.isInteger(part.value) ? part.value : undefined;
}

function compareKinds(part: RulePart<'infix'>, left: Kind | undefined, right: Kind | undefined, report: Report): void {
  if (!left || !right) return;
  if (!comparable(part.sign, left, right)) {
    report({ kind: 'cannot-join', sign: part.sign, left, right, from: part.from, to: part.to });
    return;
  }
  const word = isWord(part.right) ? checkWord(part.right, left) : checkWord(part.left, right);
  if (word && !(isWord(part.left) && isWord(part.right))) report(word);
}

function comparable(sign: Sign, left: Kind, right: Kind): boolean {
  if (left.is === 'figure' && right.is === 'figure') return sameFigure(left, right);
  return left.is === right.is && (sign === '=' || sign === '<>');
}
