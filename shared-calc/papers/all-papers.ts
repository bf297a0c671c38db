import { animalsInPaper } from './documents/animals-in.ts';
import { buildPaper } from './documents/build.ts';
import { calendarPaper } from './documents/calendar.ts';
import { carePaper } from './documents/care.ts';
import { checksPaper } from './documents/checks.ts';
import { handoverPaper } from './documents/handover.ts';
import { insidePaper } from './documents/inside.ts';
import { labelsPaper } from './documents/labels.ts';
import { needsPaper } from './documents/needs.ts';
import { optionsPaper } from './documents/options.ts';
import { pickPaper } from './documents/pick.ts';
import { prepPaper } from './documents/prep.ts';
import { quotePaper } from './documents/quote.ts';
import { orderPaper, runPaper } from './documents/run.ts';
import { surveyPaper } from './documents/survey.ts';
import { treatmentPaper } from './documents/treatment.ts';
import { watchPaper } from './documents/watch.ts';
import type { MakePaper } from './paper-input.ts';

/** A sort of paper, and how it is made of an order. */
export interface PaperKind {
  readonly kind: string;
  /** What it is about; a paper of a tank has a part for each size. */
  readonly of: 'job' | 'order' | 'tank' | 'workshop';
  readonly says: string;
  readonly make: MakePaper;
}

export const paperKinds: readonly PaperKind[] = [
  { kind: 'quote', of: 'order', says: 'the quote as the client reads it', make: quotePaper },
  { kind: 'options', of: 'order', says: 'sizes side by side to choose from', make: optionsPaper },
  { kind: 'inside', of: 'order', says: 'cost, margin and price, for the builder alone', make: insidePaper },
  { kind: 'needs', of: 'order', says: 'what is used, what to buy and what stays over', make: needsPaper },
  { kind: 'pick', of: 'tank', says: 'what to have ready on build day', make: pickPaper },
  { kind: 'run', of: 'order', says: 'everything to buy, by supplier', make: runPaper },
  { kind: 'order', of: 'order', says: 'the order to each supplier', make: orderPaper },
  { kind: 'survey', of: 'job', says: 'what is measured and asked on site', make: surveyPaper },
  { kind: 'build', of: 'tank', says: 'the build, step by step', make: buildPaper },
  { kind: 'watch', of: 'tank', says: 'readings before animals go in', make: watchPaper },
  { kind: 'animals-in', of: 'order', says: 'when animals go in, and days to look', make: animalsInPaper },
  { kind: 'handover', of: 'tank', says: 'the page that stays with the tank', make: handoverPaper },
  { kind: 'care', of: 'order', says: 'the first year: visits and rounds', make: carePaper },
  { kind: 'treatment', of: 'order', says: 'how its leaves are treated', make: treatmentPaper },
  { kind: 'prep', of: 'order', says: 'what to order and start, day by day', make: prepPaper },
  { kind: 'labels', of: 'workshop', says: 'labels of treated batches', make: labelsPaper },
  { kind: 'checks', of: 'tank', says: 'what holds, what does not, what would mend it', make: checksPaper },
  { kind: 'calendar', of: 'order', says: 'all its dates up to the end of the first year', make: calendarPaper },
];
