import type { Day } from '#shared-calc/calendar/day.ts';
import type { Job } from '#shared-calc/records/records.ts';

/** What a tick does, as far as an act can be filled in. */
export type TodayTick =
  /** Something is written as done: a step of a job, the feed of a tub. */
  | { readonly is: 'did'; readonly step: string; readonly ends: boolean }
  /** Animals go out of a tub. */
  | { readonly is: 'harvest'; readonly animals: number }
  | { readonly is: 'start'; readonly kind: string }
  /** The act needs more than a day and a person: it is done in its own view. */
  | { readonly is: 'go' };

/** Where an item comes from, in the order of items of one day. */
export const todaySources = [
  'goods',
  'orders',
  'quarantine',
  'steps',
  'tubs',
  'flies',
  'enquiry',
  'quote',
  'next act',
  'house',
  'care',
  'store',
  'season',
] as const;
export type TodaySource = (typeof todaySources)[number];

/** Something that follows from the facts; it is gone once its own fact is written. */
export interface TodayItem {
  /** No two items have the same; it stays the same until the fact is written. */
  readonly key: string;
  readonly source: TodaySource;
  /** An open day: what falls on a closed one stands on the open day before. */
  readonly day: Day;
  /** `order plants` */
  readonly what: string;
  /** A rate. */
  readonly who: string;
  readonly why: string;
  /** Days since its day; 0 if that is today or to come. */
  readonly late: number;
  readonly job?: string;
  readonly client?: string;
  readonly tub?: string;
  readonly order?: string;
  /** It decides the handover of its job. */
  readonly decides: boolean;
  readonly tick: TodayTick;
}

/** An item as its source gives it, on its own day. */
export interface TodayDraft extends Omit<TodayItem, 'source' | 'late' | 'client' | 'decides'> {
  readonly decides?: boolean;
  /** It is of today by nature, whether or not the workshop is open. */
  readonly anyDay?: true;
}

/** Whose hour an item is. */
export const builder = 'R-builder';
export const grower = 'R-grower';
export const fitter = 'R-fitter';

/** The start of an item of a job. */
export function ofJob({ id }: Pick<Job, 'id'>, what: string): Pick<TodayDraft, 'key' | 'job'> {
  return { key: `${id} ${what}`, job: id };
}
