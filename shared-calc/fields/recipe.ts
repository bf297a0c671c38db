import { z } from 'zod';

import { choice, code, data, figure, longText, name, orEmpty, reference, textAs, words, yesNo } from './field.ts';
import { checkParts, cureNames, linePlaces, lineTagNames, useNames } from './uses.ts';

export const lineRoles = ['tank', 'given', 'worked', 'need', 'work', 'check'] as const;
export const checkLevels = ['advice', 'watch', 'stop'] as const;

/** What a place in a list of records may be; it never ends in 0, so that there is always room before it. */
export const sortKeyPattern = /^[0-9a-z]{0,60}[1-9a-z]$/;

export const recipe = { id: code(), title: words('Title'), note: words('Note') };

export const line = {
  id: code(),
  recipe: reference('Recipe', ['recipe']),
  order: textAs('Place in the list', z.string().regex(sortKeyPattern), { help: 'a text that sorts' }),
  section: words('Section'),
  name: name('Name'),
  label: orEmpty(words('Label', { help: 'where the name in words does not serve' })),
  role: choice('Role', lineRoles),
  unit: textAs('Unit', z.string(), { help: 'unit shown, or choice, yes_no, each, number, money' }),
  text: longText('Rule or figure', { help: 'empty while it has none; a choice is its bare word' }),
  options: orEmpty(data('Choices', z.array(z.string()))),
  note: words('Note'),
  low: orEmpty(figure('Low', "the line's", { help: 'out of range below' })),
  high: orEmpty(figure('High', "the line's", { help: 'out of range above' })),
  shownFirst: yesNo('Shown first'),
  inset: yesNo('Set in', { help: 'under the line before it' }),
  material: orEmpty(code('Material', { help: "TANK for the column's own tank" })),
  group: orEmpty(reference('Quote group', ['margin'])),
  task: orEmpty(code('Task')),
  perJob: yesNo('Once a job', { help: 'from the column where it is largest' }),
  level: orEmpty(choice('Level', checkLevels)),
  says: orEmpty(words('Says')),
  decides: orEmpty(words('Decides')),
  caution: orEmpty(words('Caution')),
  use: orEmpty(choice('Use', useNames, { help: 'what the program itself reads it for' })),
  as: orEmpty(data('Belongs to', z.array(z.enum(lineTagNames)))),
  place: orEmpty(choice('Layer', linePlaces)),
  part: orEmpty(choice('Part', checkParts, { help: 'of the sheet of checks' })),
  cures: orEmpty(data('Cures', z.array(z.enum(cureNames)), { help: 'the likeliest first' })),
};
