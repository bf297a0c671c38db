import { z } from 'zod';

import {
  choice,
  code,
  data,
  figure,
  longText,
  name,
  orEmpty,
  reference,
  season,
  textAs,
  words,
  yesNo,
} from './field.ts';
import { sourceFields } from './source.ts';
import { checkParts, cureNames, linePlaces, lineTagNames, useNames } from './uses.ts';

export const lineRoles = ['tank', 'given', 'worked', 'need', 'work', 'check'] as const;
export const checkLevels = ['advice', 'watch', 'stop'] as const;

/** The sort key of a record in a list; it never ends in 0, so that there is always room before it. */
export const sortKeyPattern = /^[0-9a-z]{0,60}[1-9a-z]$/;

export const recipe = {
  id: code(),
  title: words('Title'),
  note: words('Note'),
  /** The recipe whose lines it has, but for its differences. */
  parent: orEmpty(reference('Parent', ['recipe'], { empty: 'none: it stands alone' })),
  animalKind: orEmpty(reference('For animals', ['animalKind'], { empty: 'any' })),
  tanks: orEmpty(data('For tanks', z.array(code().schema).min(1))),
  season: orEmpty(season('For the season')),
};

export const line = {
  id: code(),
  recipe: reference('Recipe', ['recipe']),
  order: textAs('Place in the list', z.string().regex(sortKeyPattern), { help: 'a text that sorts' }),
  section: words('Section'),
  name: name('Name in rules', { help: 'Renamed through every rule that uses it.' }),
  label: orEmpty(words('Name in words')),
  role: choice('What it is', lineRoles, {
    labels: {
      tank: 'supplied by the tank',
      given: 'a figure of the house',
      worked: 'worked by a rule',
      need: 'a need of a material',
      work: 'minutes of work',
      check: 'a check',
    },
  }),
  unit: textAs('Unit', z.string(), {
    help: 'mm, m2, L, kg, g, %, each, min, degC, number, money; choice and yes_no for words',
  }),
  text: longText('Rule or figure', { help: 'empty while it has none; a choice is its bare word' }),
  options: orEmpty(data('Choices', z.array(z.string()))),
  note: words('Note'),
  low: orEmpty(figure('At least', "the line's", { help: 'out of range below' })),
  high: orEmpty(figure('At most', "the line's", { help: 'out of range above' })),
  shownFirst: yesNo('shown first'),
  inset: yesNo('set in under the line before'),
  /** `TANK` for the column's own tank. */
  material: orEmpty(code('Material')),
  group: orEmpty(reference('Quote group', ['margin'])),
  task: orEmpty(code('Task')),
  perJob: yesNo('once a job, not once a build', { help: 'from the column where it is largest' }),
  level: orEmpty(choice('Level', checkLevels)),
  says: orEmpty(words('Sentence when it does not hold', { help: 'The name of a line in braces shows its figure.' })),
  decides: orEmpty(words('Who decides')),
  caution: orEmpty(words('Caution')),
  use: orEmpty(choice('Used by the program for', useNames)),
  as: orEmpty(data('Belongs to', z.array(z.enum(lineTagNames)))),
  place: orEmpty(choice('Step of the build', linePlaces)),
  part: orEmpty(choice('Part of the sheet of checks', checkParts)),
  cures: orEmpty(
    data('Cures to try, the likeliest first', z.array(z.enum(cureNames)), {
      help: `Any of: ${cureNames.join(', ')}.`,
    }),
  ),
  /** The range of a given figure: the truth lies in it about nineteen times in twenty. */
  least: orEmpty(
    figure('Least it may be', "the line's", { help: 'the range of a guess; a check must hold at both ends' }),
  ),
  most: orEmpty(figure('Most it may be', "the line's")),
  /**
   * Guesses that may be wrong together: by the name of the case, the end that this one moves to, part of its way.
   */
  cases: orEmpty(data('Wrong together with others', z.record(z.string(), z.enum(['least', 'most'])))),
  unlessRanged: orEmpty(
    choice('Asked only while this has no range', useNames, { help: 'A check over guesses says the same better.' }),
  ),
  ...sourceFields,
  /** Of a work line: the rate that its minutes are paid at; the builder's where it is left out. */
  who: orEmpty(reference('Whose hour', ['rate'], { empty: 'the builder' })),
};
