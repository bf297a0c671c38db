import type { Day } from '#shared-calc/calendar/day.ts';

/** Steps of a prep plan, in the order in which the command line lists them. */
export const prepSteps = [
  'tank',
  'panel',
  'plants',
  'springtails',
  'media',
  'panes',
  'lamps',
  'leaves',
  'build',
  'hardscape',
] as const;
export type PrepStepName = (typeof prepSteps)[number];

/** What is ordered: the steps with goods. Leaves are ordered only where the Store is short of them. */
export const goodsSteps = ['tank', 'plants', 'media', 'panes', 'lamps', 'hardscape', 'leaves'] as const;
export type GoodsStep = (typeof goodsSteps)[number];

/** `in` is of goods, `done` of all other steps. */
export type StepState = 'open' | 'ordered' | 'in' | 'done';

export interface PrepStep {
  readonly step: PrepStepName;
  readonly state: StepState;
  /**
   * The day it was done or came in; of ordered goods the day they are expected; of an open step the last day to do it,
   * or for the goods to be in.
   */
  readonly date: Day;
  /** The last day to order; left out if nothing is to be ordered. */
  readonly orderBy?: Day;
  /** The day on which it was done, or its goods came in. */
  readonly on?: Day;
  /** The day its supplier promised. */
  readonly due?: Day;
  /** That day is past. */
  readonly overdue?: boolean;
  /** Of plants that are in: when they leave their quarantine. */
  readonly cleared?: Day;
  /** The standing tub that gives the springtails. */
  readonly tub?: string;
}

/** The steps that are over, with their day. */
export type StepsDone = Readonly<Partial<Record<PrepStepName | 'watch' | 'handover', Day>>>;
