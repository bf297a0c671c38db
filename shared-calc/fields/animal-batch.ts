import { z } from 'zod';

import { code, count, data, day, orEmpty, reference, words } from './field.ts';

const Day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const many = { low: 1, high: 9_999, fresh: 1 };

/** Animals that came together, bred here or bought, and stand apart until their quarantine is over. */
export const animalBatch = {
  id: code(),
  kind: reference('Kind', ['animalKind']),
  count: count('Animals', many),
  cameOn: day('Came on'),
  from: words('From', { help: 'own, or who they are from' }),
  /** The day from which the quarantine counts, where another animal joined later. */
  joinedOn: orEmpty(day('Last one joined on')),
  looks: data('Looks', z.array(z.strictObject({ on: Day, seen: z.string().max(2_000) })), { fresh: [] }),
  /** Each is asked for and judged by a vet. */
  tests: data(
    'Tests',
    z.array(z.strictObject({ which: z.string().max(200), on: Day, result: z.string().max(2_000) })),
    { fresh: [] },
  ),
  place: words('Place'),
  note: words('Note'),
};

/** Animals of a batch that go into a size of a job. */
export const placement = {
  id: code(),
  batch: reference('Batch', ['animalBatch']),
  size: reference('Size', ['size']),
  count: count('Animals', many),
  on: day('On'),
  /** Why they go in although their quarantine is not over, and who says so. */
  anyway: words('In spite of their quarantine, because'),
  who: orEmpty(reference('Who says so', ['rate'])),
};
