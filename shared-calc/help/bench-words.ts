import type { Word } from './word.ts';

/** Recipes, sizes and what the bench shows. */
export const benchWords = {
  'house-recipe': {
    word: 'house recipe',
    says: 'How this workshop builds a tank: a list of {line|lines} that holds for every tank until one departs from it.',
  },
  line: {
    word: 'line',
    says: 'One figure of a recipe, with its name and its kind: a length, litres, minutes, money. It holds a figure or a {rule} over other lines.',
  },
  rule: {
    word: 'rule',
    says: 'How a line is worked from other lines. You see it under *Show the rule* and in the house recipe; a quote needs no rule written.',
  },
  size: {
    word: 'size',
    says: 'One tank of a job beside the recipe, as one column of the {bench|size bench}. Two of the same tank are one size with the count 2.',
  },
  house: {
    word: 'house value',
    says: 'What the {house-recipe} says for every tank: a *house figure* or *choice* is given, a *house rule* works it. A cell without a mark shows it.',
  },
  'as-the-house': {
    word: 'as the house',
    says: 'The cell follows the {house-recipe} again: nothing is written for this tank alone.',
  },
  local: {
    word: 'local value',
    says: 'A figure or rule written for one size only. It stays when the house changes, and a clay bar marks it. *Back to house* removes it.',
  },
  'whole-job': {
    word: 'whole job',
    says: 'A value written for every size of one job. A {local} of one size goes before it.',
  },
  'send-to-house': {
    word: 'send to house',
    says: 'Makes a local value the value of the {house-recipe}, for every job that is not sold yet. A sold job is offered the change and stays as it was sold until you take it.',
  },
  'sold-as': {
    word: 'sold as',
    says: 'An accepted job is worked from its quote: recipe, prices and rates as they were then. Later changes of the house or of prices do not move it.',
  },
  'house-change': {
    word: 'house change',
    says: 'A dated entry of what changed in the {house-recipe} and why. Each sold job can take it or leave it.',
  },
  range: {
    word: 'range',
    says: 'The least and the most that a {guess|guessed figure} may be. What rests on it is shown with its bad end, and a check holds only if it holds there too.',
    picture: 'range',
  },
  guess: {
    word: 'guess',
    says: 'A figure that nobody measured: from common practice or from memory. The working panel says so, and its {range} says how far off it may be.',
    picture: 'range',
  },
  source: {
    word: 'source',
    says: 'Where a figure is from: measured by us, a supplier, published, common practice, from memory, or our own choice.',
  },
  check: {
    word: 'check',
    says: 'A line that holds or does not. {stop} is graver than {watch-level|watch}, and {advice} is the mildest. A check with a figure missing is {not-known}, which is not the same as *holds*.',
  },
  stop: {
    word: 'stop',
    says: 'A check that must hold before the tank is built. Going on all the same needs a reason and the name of the person who decides.',
  },
  'watch-level': {
    word: 'watch',
    says: 'A check to keep an eye on: the build can go on, and the handover card says what to look for.',
  },
  advice: {
    word: 'advice',
    says: 'A check that says how it would be better.',
  },
  cure: {
    word: 'cure',
    says: 'A change of one line that makes a failing {check} hold, with what it does to the price. *Take it* writes it into this size.',
  },
  flag: {
    word: 'flag',
    says: 'The sign at a check that does not hold. *Next flag* goes from one to the next.',
  },
  'not-known': {
    word: 'not known yet',
    says: 'A figure is missing that this rests on. It is never taken as nought, and a check that waits for it does not count as passed.',
  },
  waits: {
    word: 'waits on',
    says: 'The cell has no figure yet because another one is missing; it names that one.',
  },
  'shown-first': {
    word: 'shown first',
    says: 'The main figure of a section: it is seen on the bench while the section is closed.',
  },
  'set-in': {
    word: 'set in',
    says: 'The line belongs to the one above it, as the parts of a mix do. It stands a little to the right on the bench.',
  },
  use: {
    word: 'use of a line',
    says: 'What the program itself reads a line for, such as the depth of the litter. Drawings, checks and cards find it by that, whatever the line is called.',
  },
} as const satisfies Readonly<Record<string, Word>>;
