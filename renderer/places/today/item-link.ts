import { writeRoute } from '#renderer/frame/place-route.ts';
import { writePrepare } from '#renderer/frame/prepare-route.ts';
import type { TodayItem, TodaySource } from '#shared-calc/derive/today-item.ts';
import type { Records } from '#shared-calc/records/records.ts';

type Linked = (item: TodayItem, records: Pick<Records, 'tub'>) => string;

const toRun: Linked = () => writeRoute('run');
const toStore: Linked = () => writeRoute('store');
const toPlan: Linked = ({ job }) => writePrepare(job, 'dates');
const toJob: Linked = ({ job = '' }) => writeRoute('jobs', job);
const toCultures: Linked = ({ tick, tub = '' }, records) => {
  const kind = tick.is === 'start' ? tick.kind : records.tub.get(tub)?.kind;
  return kind === undefined ? writeRoute('cultures') : writeRoute('cultures', kind);
};

const links: Readonly<Record<TodaySource, Linked>> = {
  goods: toRun,
  orders: toStore,
  quarantine: toPlan,
  steps: toPlan,
  tubs: toCultures,
  flies: toCultures,
  enquiry: toJob,
  quote: ({ job = '' }) => writeRoute('quotes', job),
  'next act': toJob,
  house: toJob,
  care: toJob,
  store: toStore,
  season: toRun,
};

/** The view in which an item is done, or from which it follows. */
export function itemLink(item: TodayItem, records: Pick<Records, 'tub'>): string {
  return links[item.source](item, records);
}
