import type { PrepStepName } from '#shared-calc/prepare/prep-steps.ts';

export type AnnouncedStep = PrepStepName | 'handover';

interface StepWords {
  /** The act on the last day to order; none if nothing is ordered. */
  readonly order?: string;
  /** The act, or the goods that are in, on the step's own day. */
  readonly done: string;
}

/** Steps of a prep plan in the builder's words, the same for page, paper and calendar. */
export const stepWords: Readonly<Record<AnnouncedStep, StepWords>> = {
  tank: { order: 'Order the tank', done: 'Tank in' },
  panel: { done: 'Glue the background' },
  hardscape: { order: 'Order wood, cork and sealant', done: 'Wood, cork and sealant in' },
  plants: { order: 'Order plants', done: 'Plants in, to quarantine' },
  springtails: { done: 'Start the springtail tub' },
  media: { order: 'Order media', done: 'Media in; blend the mix' },
  panes: { order: 'Order the panes', done: 'Panes in' },
  lamps: { order: 'Order lamps and misting', done: 'Lamps and misting in' },
  leaves: { order: 'Order the leaves', done: 'Treat the leaves' },
  build: { done: 'Build' },
  handover: { done: 'Hand over' },
};

/** Visits and calls of the care calendar. */
export const careWords: Readonly<Record<string, string>> = {
  call: 'Call: how is the tank',
  visit: 'First visit',
  'quarterly visit': 'Quarterly visit',
  'yearly visit': 'Yearly visit',
};
