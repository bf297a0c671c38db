import { buildActs, careActs, paperActs, prepActs, siteActs, type HazardousAct } from '#shared-calc/cautions/acts.ts';
import type { Hazard } from '#shared-calc/cautions/hazards.ts';
import { animalsInPaper } from './animals-in-paper.ts';
import { buildPaper } from './build-paper.ts';
import { calendarPaper } from './calendar-paper.ts';
import { carePaper } from './care-paper.ts';
import { checksPaper } from './checks-paper.ts';
import { handoverPaper } from './handover-paper.ts';
import { insidePaper } from './inside-paper.ts';
import { labelsPaper } from './labels-paper.ts';
import { needsPaper } from './needs-paper.ts';
import { optionsPaper } from './options-paper.ts';
import { pickPaper } from './pick-paper.ts';
import { prepPaper } from './prep-paper.ts';
import { quotePaper } from './quote-paper.ts';
import { orderPaper } from './order-paper.ts';
import { runPaper } from './run-paper.ts';
import { surveyPaper } from './survey-paper.ts';
import { treatmentPaper } from './treatment-paper.ts';
import { watchPaper } from './watch-paper.ts';
import { documentInUnits } from './document-in-units.ts';
import { displayFor, type MakePaper } from './paper-input.ts';
import { ok } from '#shared-calc/result.ts';

/** A kind of paper, and how it is made from an order. */
export interface PaperKind {
  readonly kind: string;
  /** Its subject; a paper of a tank has a part for each size. */
  readonly of: 'job' | 'order' | 'tank' | 'workshop';
  readonly says: string;
  /** What can hurt in the acts that it tells of; it has a caution against each that the order has. */
  readonly hazards: readonly Hazard[];
  readonly make: MakePaper;
}

function hazardsIn(acts: Readonly<Record<string, HazardousAct>>): readonly Hazard[] {
  return Object.values(acts).flatMap(({ hazards }) => hazards);
}

const kinds: readonly PaperKind[] = [
  {
    kind: 'quote',
    of: 'order',
    says: 'the quote as the client reads it',
    hazards: paperActs.quote.hazards,
    make: quotePaper,
  },
  {
    kind: 'options',
    of: 'order',
    says: 'sizes side by side to choose from',
    hazards: paperActs.options.hazards,
    make: optionsPaper,
  },
  {
    kind: 'inside',
    of: 'order',
    says: 'cost, margin and price, for the builder alone',
    hazards: paperActs.inside.hazards,
    make: insidePaper,
  },
  {
    kind: 'needs',
    of: 'order',
    says: 'what is used, what to buy and what stays over',
    hazards: paperActs.needs.hazards,
    make: needsPaper,
  },
  {
    kind: 'pick',
    of: 'tank',
    says: 'what to have ready on build day',
    hazards: paperActs.pick.hazards,
    make: pickPaper,
  },
  { kind: 'run', of: 'order', says: 'everything to buy, by supplier', hazards: paperActs.run.hazards, make: runPaper },
  {
    kind: 'order',
    of: 'order',
    says: 'the order to each supplier',
    hazards: paperActs.order.hazards,
    make: orderPaper,
  },
  {
    kind: 'survey',
    of: 'job',
    says: 'what is measured and asked on site',
    hazards: siteActs.survey.hazards,
    make: surveyPaper,
  },
  { kind: 'build', of: 'tank', says: 'the build, step by step', hazards: hazardsIn(buildActs), make: buildPaper },
  {
    kind: 'watch',
    of: 'tank',
    says: 'readings before animals go in',
    hazards: siteActs.watch.hazards,
    make: watchPaper,
  },
  {
    kind: 'animals-in',
    of: 'order',
    says: 'when animals go in, and days to look',
    hazards: siteActs.animalsIn.hazards,
    make: animalsInPaper,
  },
  {
    kind: 'handover',
    of: 'tank',
    says: 'the page that stays with the tank',
    hazards: siteActs.keeping.hazards,
    make: handoverPaper,
  },
  {
    kind: 'care',
    of: 'order',
    says: 'the first year: visits and rounds',
    hazards: [...siteActs.visit.hazards, ...hazardsIn(careActs)],
    make: carePaper,
  },
  { kind: 'treatment', of: 'order', says: 'how its leaves are treated', hazards: ['heat'], make: treatmentPaper },
  {
    kind: 'prep',
    of: 'order',
    says: 'what to order and start, day by day',
    hazards: hazardsIn(prepActs),
    make: prepPaper,
  },
  { kind: 'labels', of: 'workshop', says: 'labels of treated batches', hazards: [], make: labelsPaper },
  { kind: 'checks', of: 'tank', says: 'what holds, what does not, what would mend it', hazards: [], make: checksPaper },
  {
    kind: 'calendar',
    of: 'order',
    says: 'all its dates up to the end of the first year',
    hazards: [...hazardsIn(prepActs), ...hazardsIn(careActs), ...siteActs.visit.hazards],
    make: calendarPaper,
  },
];

export const paperKinds: readonly PaperKind[] = kinds.map((each) => ({ ...each, make: inWorkshopUnits(each.make) }));

/** Data stays as it is; what is read on the paper is in the workshop's units. */
function inWorkshopUnits(make: MakePaper): MakePaper {
  return (input) => {
    const made = make(input);
    return made.ok ? ok({ ...made.value, document: documentInUnits(made.value.document, displayFor(input)) }) : made;
  };
}
