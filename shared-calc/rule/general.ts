import {
  alwaysPlain,
  ifKind,
  logicKind,
  oneKind,
  pickKind,
  plainOnly,
  powerOfKind,
  remainderKind,
  rootKind,
  roundedKind,
  sizeOfKind,
  steppedKind,
  sumOfKinds,
  type KindRule,
} from './general-kinds.ts';

/** A function that is not of the trade: its written form, its effect, and how its kind follows. */
export interface GeneralFunction {
  readonly name: string;
  /** The written form: `round(figure, digits)`. */
  readonly shows: string;
  readonly says: string;
  readonly least: number;
  /** Left out if there is no limit. */
  readonly most?: number;
  readonly kindOf: KindRule;
}

/** From OASIS OpenFormula 1.3 part 4, plus our own clamp, round_to and pick. */
const written: readonly GeneralFunction[] = [
  { name: 'abs', least: 1, most: 1, kindOf: sizeOfKind, shows: 'abs(figure)', says: 'The figure without its minus.' },
  { name: 'min', least: 1, kindOf: oneKind, shows: 'min(figure, ...)', says: 'The smallest of several.' },
  { name: 'max', least: 1, kindOf: oneKind, shows: 'max(figure, ...)', says: 'The largest of several.' },
  { name: 'sum', least: 1, kindOf: sumOfKinds, shows: 'sum(figure, ...)', says: 'All added up.' },
  {
    name: 'round',
    least: 1,
    most: 2,
    kindOf: roundedKind,
    shows: 'round(figure, digits)',
    says: 'Rounded to a number of digits, half away from zero; without digits, to a whole number.',
  },
  {
    name: 'roundup',
    least: 1,
    most: 2,
    kindOf: roundedKind,
    shows: 'roundup(figure, digits)',
    says: 'Rounded away from zero to a number of digits; without digits, to a whole number.',
  },
  {
    name: 'rounddown',
    least: 1,
    most: 2,
    kindOf: roundedKind,
    shows: 'rounddown(figure, digits)',
    says: 'Rounded toward zero to a number of digits; without digits, to a whole number.',
  },
  {
    name: 'ceiling',
    least: 1,
    most: 3,
    kindOf: roundedKind,
    shows: 'ceiling(figure, step, mode)',
    says: 'Up to the next multiple of a step of the same sign.',
  },
  {
    name: 'floor',
    least: 1,
    most: 3,
    kindOf: roundedKind,
    shows: 'floor(figure, step, mode)',
    says: 'Down to the last multiple of a step of the same sign.',
  },
  {
    name: 'int',
    least: 1,
    most: 1,
    kindOf: roundedKind,
    shows: 'int(figure)',
    says: 'Down to the whole number below.',
  },
  {
    name: 'mod',
    least: 2,
    most: 2,
    kindOf: remainderKind,
    shows: 'mod(figure, by)',
    says: 'The remainder after division by `by`.',
  },
  {
    name: 'sqrt',
    least: 1,
    most: 1,
    kindOf: rootKind,
    shows: 'sqrt(figure)',
    says: 'The square root; of an area it is a length.',
  },
  { name: 'exp', least: 1, most: 1, kindOf: plainOnly, shows: 'exp(figure)', says: 'e raised to the figure.' },
  { name: 'ln', least: 1, most: 1, kindOf: plainOnly, shows: 'ln(figure)', says: 'The natural logarithm.' },
  {
    name: 'power',
    least: 2,
    most: 2,
    kindOf: powerOfKind,
    shows: 'power(figure, to)',
    says: 'The figure raised to a power.',
  },
  {
    name: 'pi',
    least: 0,
    most: 0,
    kindOf: alwaysPlain,
    shows: 'pi()',
    says: "Ratio of a circle's circumference to its diameter, 3.14159...",
  },
  {
    name: 'if',
    least: 3,
    most: 3,
    kindOf: ifKind,
    shows: 'if(when, then, else)',
    says: 'The first figure if the condition is yes, otherwise the second.',
  },
  { name: 'and', least: 1, kindOf: logicKind, shows: 'and(yes_or_no, ...)', says: 'Yes if all are yes.' },
  { name: 'or', least: 1, kindOf: logicKind, shows: 'or(yes_or_no, ...)', says: 'Yes if at least one is yes.' },
  { name: 'not', least: 1, most: 1, kindOf: logicKind, shows: 'not(yes_or_no)', says: 'Yes for no, no for yes.' },
  {
    name: 'clamp',
    least: 3,
    most: 3,
    kindOf: oneKind,
    shows: 'clamp(figure, low, high)',
    says: 'The figure, but not below low and not above high.',
  },
  {
    name: 'round_to',
    least: 2,
    most: 2,
    kindOf: steppedKind,
    shows: 'round_to(figure, step)',
    says: 'To the nearest step, as 41 mm to 5 mm is 40 mm.',
  },
  {
    name: 'pick',
    least: 3,
    kindOf: pickKind,
    shows: 'pick(choice, when, figure, ...)',
    says: 'The figure after the word or size that fits the choice.',
  },
];

export const generalFunctions: ReadonlyMap<string, GeneralFunction> = new Map(written.map((each) => [each.name, each]));
