import { z } from 'zod';

import {
  choice,
  code,
  count,
  data,
  day,
  figure,
  longText,
  money,
  name,
  orEmpty,
  reference,
  schemaOf,
  textAs,
  within,
  words,
} from './field.ts';
import { survey, unasked } from './survey.ts';
import { typedFields } from './typed.ts';

export const jobStates = [
  'enquiry',
  'surveyed',
  'quoted',
  'accepted',
  'deposit in',
  'ordered',
  'in quarantine',
  'ready to build',
  'built',
  'watching',
  'handed over',
  'in service',
  'closed',
] as const;

export const job = {
  id: code(),
  title: words('Title'),
  client: words('Client'),
  contact: words('Who to speak to', { called: 'Contact' }),
  recipe: reference('House recipe', ['recipe']),
  state: choice('State', jobStates),
  site: words('Place', { lines: true }),
  access: words('Way in: doors, stairs, lift', { called: 'Way in', lines: true }),
  audience: words('Who is near it', { help: 'A note; what decides is asked in the survey.' }),
  animals: words('Animals wanted', { called: 'Animals' }),
  area: words('Area, for the visits', { called: 'Area' }),
  enquiredOn: orEmpty(day('Enquiry of', { called: 'Day of the enquiry', past: true })),
  handover: orEmpty(day('Handover wanted')),
  depositCoins: orEmpty(money('Deposit')),
  depositOn: orEmpty(day('In on', { called: 'Deposit in on', past: true })),
  basis: choice('Costing basis', ['used', 'packs'], {
    labels: { used: 'used: what goes in', packs: 'packs: every bag bought' },
  }),
  nextAct: words('Next act'),
  nextOn: orEmpty(day('By the day', { called: 'Day of the next act' })),
  note: longText('What else there is to know', { called: 'Note' }),
  survey: data('Survey', schemaOf(survey), { fresh: unasked }),
  /** The issued quote that it is worked from, from *accepted* on. */
  soldAs: orEmpty(code('Sold as')),
  acceptedOn: orEmpty(day('Accepted on', { past: true })),
  lostWhy: orEmpty(words('Why it was lost')),
  ...typedFields,
};

/** A column of a job's size bench. */
export const size = {
  id: code(),
  job: reference('Job', ['job']),
  tank: reference('Tank', ['tank']),
  order: figure('Place', 'number'),
  label: words('Name'),
  count: within(count('Builds', { low: 1, high: 999 }), (any) => any.min(1).max(999)),
  animalKind: orEmpty(reference('Animals', ['animalKind'], { empty: 'no kind named' })),
  /** In one build; 0 for a tank of plants only, left out while nobody has said. */
  animals: orEmpty(count('How many animals', { low: 0, high: 9_999, help: 'in one build; 0: plants only' })),
  /** Left out: the job's own recipe. */
  recipe: orEmpty(reference('Recipe', ['recipe'], { empty: 'that of the job' })),
};

/** A cell written over: for one size, or for the whole job if `size` is left out. */
export const localValue = {
  id: code(),
  job: reference('Job', ['job']),
  size: orEmpty(reference('Size', ['size'])),
  line: name('Line'),
  text: longText('Rule or figure'),
  note: words('Note'),
  by: choice('By', ['client', 'us']),
};

/** Frozen at *Issue*: `body` has all inputs and results, `sha256` is its hash. */
export const issuedQuote = {
  id: code(),
  job: orEmpty(reference('Job', ['job'])),
  number: textAs('Number', z.string()),
  revision: textAs('Revision', z.string()),
  issuedOn: day('Issued on'),
  body: textAs('Body', z.string()),
  sha256: textAs('Hash', z.string().length(64)),
};

export const quoteLine = {
  id: code(),
  job: reference('Job', ['job']),
  label: words('What'),
  group: reference('Group', ['margin']),
  costCoins: money('Cost', { low: 0 }),
  by: choice('Asked for by', ['client', 'us'], { labels: { client: 'the client' } }),
  size: orEmpty(reference('For', ['size'], { empty: 'the whole job' })),
  supplier: orEmpty(reference('Bought from', ['supplier'], { empty: 'nobody named' })),
  leadDays: orEmpty(within(count('Lead, working days', { called: 'Lead', low: 0, high: 365 }), (any) => any.min(0))),
};

/**
 * Packs of a material chosen by hand for a shopping run over these jobs; ignored once its goods are no longer in the
 * book.
 */
export const packChoice = {
  id: code(),
  jobs: data('Jobs', z.array(code().schema).min(1)),
  material: code('Material'),
  packs: data('Packs', z.array(z.strictObject({ pack: code().schema, count: z.int().min(0).max(9_999) }))),
  /** Whose offer is taken; then its best packs, where `packs` has none. */
  supplier: orEmpty(code('Supplier')),
};

/** What a job used, by measure: minutes of a task, litres of a material, plants lost. */
export const actual = {
  id: code(),
  job: reference('Job', ['job']),
  size: orEmpty(reference('Size', ['size'])),
  line: textAs('Line', z.string()),
  value: figure('Took', "the line's"),
  unit: textAs('Unit', z.string()),
  on: day('On', { past: true }),
  note: words('Note'),
  ...typedFields,
};
