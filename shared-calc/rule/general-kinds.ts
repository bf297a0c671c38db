import { PLAIN, powerOfDimension, sameDimension } from '#shared-calc/quantity/dimension.ts';
import { figureKind, YES_NO, type FigureKind, type Kind } from '#shared-calc/quantity/kind.ts';
import { checkWord, isWord } from './check-words.ts';
import type { CheckFault } from './fault.ts';
import { raisedKind, type Report } from './infix-kind.ts';
import { commonKind, isPlainFigure, isReading, kindFits } from './kind-fits.ts';
import type { Rule, RulePart } from './tree.ts';

/** A call of a general function and the kinds of its arguments, `undefined` if one is not known. */
export interface GivenCall {
  readonly call: RulePart<'call'>;
  readonly kinds: readonly (Kind | undefined)[];
  readonly report: Report;
}

/** How the kind of a call follows from its arguments; incompatible arguments are reported. */
export type KindRule = (given: GivenCall) => Kind | undefined;

/** `pi` and similar: always plain. */
export function alwaysPlain(): Kind {
  return figureKind(PLAIN);
}

/** exp, ln: plain in, plain out. */
export function plainOnly(given: GivenCall): Kind | undefined {
  return allPlain(given, 0) ? alwaysPlain() : undefined;
}

/** min, max, clamp: figures of one kind, temperatures too. */
export function oneKind(given: GivenCall): Kind | undefined {
  return agreeing(given, figuresOf(given));
}

export function sumOfKinds(given: GivenCall): Kind | undefined {
  const figures = figuresOf(given);
  const readings = figures.filter(({ kind }) => isReading(kind));
  for (const { part } of readings) tell(given, part, { kind: 'reading-alone', sign: 'sum' });
  return readings.length === 0 ? agreeing(given, figures) : undefined;
}

export function sizeOfKind(given: GivenCall): Kind | undefined {
  const [figure] = figuresOf(given);
  if (!figure || !isReading(figure.kind)) return figure?.kind;
  return tell(given, figure.part, { kind: 'reading-alone', sign: 'abs' });
}

/**
 * round, floor, int and similar: only plain figures, as a length would be rounded in metres, a unit that nobody named.
 */
export function roundedKind(given: GivenCall): Kind | undefined {
  const [first] = figuresOf(given, 1);
  const restPlain = allPlain(given, 1);
  if (!first) return undefined;
  if (isPlainFigure(first.kind)) return restPlain ? first.kind : undefined;
  return tell(given, first.part, { kind: 'rounds-plain-only', fn: given.call.name, given: first.kind });
}

export function remainderKind(given: GivenCall): Kind | undefined {
  const figures = figuresOf(given);
  const reading = figures.find(({ kind }) => isReading(kind));
  if (reading) return tell(given, reading.part, { kind: 'reading-alone', sign: '/' });
  return agreeing(given, figures);
}

export function rootKind(given: GivenCall): Kind | undefined {
  const [figure] = figuresOf(given);
  if (!figure) return undefined;
  const halved = isReading(figure.kind) ? undefined : powerOfDimension(figure.kind.dimension, 0.5);
  return halved ? figureKind(halved) : tell(given, figure.part, { kind: 'bad-root', given: figure.kind });
}

export function powerOfKind(given: GivenCall): Kind | undefined {
  const [base, power] = figuresOf(given);
  if (!base || !power) return undefined;
  if (isReading(base.kind)) return tell(given, base.part, { kind: 'reading-alone', sign: '^' });
  return raisedKind(base.kind, power.kind, power.part) ?? tell(given, power.part, { kind: 'bad-power' });
}

/** The step of a temperature is in K. */
export function steppedKind(given: GivenCall): Kind | undefined {
  const [figure, step] = figuresOf(given);
  if (!figure || !step) return undefined;
  if (isReading(step.kind)) return tell(given, step.part, { kind: 'reading-alone', sign: 'round_to' });
  if (sameDimension(figure.kind.dimension, step.kind.dimension)) return figure.kind;
  return tell(given, step.part, { kind: 'branches-differ', fn: 'round_to', left: figure.kind, right: step.kind });
}

export function logicKind(given: GivenCall): Kind {
  for (const at of given.call.args.keys()) needYesNo(given, at);
  return YES_NO;
}

export function ifKind(given: GivenCall): Kind | undefined {
  needYesNo(given, 0);
  return agreeing(given, partsOf(given, 1));
}

/** pick(choice, when1, figure1, ...): each `when` is compared with the choice; the figures have one kind. */
export function pickKind(given: GivenCall): Kind | undefined {
  const parts = partsOf(given, 0);
  const first = given.call.args[0];
  // A literal word may be compared with any other: it is not a line's choice.
  const choice: Kind | undefined = first && isWord(first) ? { is: 'choice' } : given.kinds[0];
  for (const { part, kind, at } of parts) {
    if (choice && at % 2 === 1) checkWhen(given, part, choice, kind);
  }
  return agreeing(
    given,
    parts.filter(({ at }) => at > 0 && at % 2 === 0),
  );
}

function checkWhen(given: GivenCall, part: Rule, choice: Kind, when: Kind): void {
  const word = checkWord(part, choice, 'pick');
  if (word) given.report(word);
  else if (!kindFits(choice, when)) {
    tell(given, part, { kind: 'branches-differ', fn: 'pick', left: choice, right: when });
  }
}

interface KnownPart<K extends Kind = Kind> {
  readonly part: Rule;
  readonly kind: K;
  readonly at: number;
}

function partsOf({ call, kinds }: GivenCall, from: number): readonly KnownPart[] {
  return call.args.flatMap((part, at) => {
    const kind = kinds[at];
    return kind && at >= from ? [{ part, kind, at }] : [];
  });
}

/** The arguments that are figures, up to `end`; an argument that is not a figure is reported. */
function figuresOf(given: GivenCall, end = Number.POSITIVE_INFINITY): readonly KnownPart<FigureKind>[] {
  return partsOf(given, 0).flatMap(({ part, kind, at }) => {
    if (at >= end) return [];
    if (kind.is === 'figure') return [{ part, kind, at }];
    tell(given, part, { kind: 'needs-figure', given: kind, fn: given.call.name });
    return [];
  });
}

function agreeing(given: GivenCall, parts: readonly KnownPart[]): Kind | undefined {
  let common = parts[0]?.kind;
  for (const { part, kind } of parts.slice(1)) {
    const next = common && commonKind(common, kind);
    if (common && !next) {
      tell(given, part, { kind: 'branches-differ', fn: given.call.name, left: common, right: kind });
      return undefined;
    }
    common = next;
  }
  return common;
}

function allPlain(given: GivenCall, from: number): boolean {
  const wrong = partsOf(given, from).filter(({ kind }) => !isPlainFigure(kind));
  for (const { part, kind } of wrong) tell(given, part, { kind: 'needs-plain', given: kind, fn: given.call.name });
  return wrong.length === 0;
}

function needYesNo(given: GivenCall, at: number): void {
  const part = given.call.args[at];
  const kind = given.kinds[at];
  if (part && kind && kind.is !== 'yes_no')
    tell(given, part, { kind: 'needs-yes-no', given: kind, fn: given.call.name });
}

function tell({ report }: GivenCall, part: Rule, fault: CheckFault): undefined {
  report({ ...fault, from: part.from, to: part.to });
}
