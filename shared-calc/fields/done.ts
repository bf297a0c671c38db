import { z } from 'zod';

import { choice, code, data, day, longText, orEmpty, reference } from './field.ts';
import { jobStates } from './job.ts';

/** What was done on a day, and by whom: a quote issued or a job moved although something stood against it. */
export const done = {
  id: code(),
  on: day('On'),
  step: choice('Step', ['issued', ...jobStates]),
  who: reference('Who', ['rate']),
  job: orEmpty(reference('Job', ['job'])),
  /** Of a quote over sizes alone there is no job: its number says what it is of. */
  quote: orEmpty(reference('Quote', ['issuedQuote'])),
  /** What stood against it that day, in the words that were shown. */
  against: data('Against it', z.array(z.strictObject({ what: z.string(), why: z.string() }))),
  note: longText('Reason'),
};
