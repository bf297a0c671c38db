import { writeRoute } from '#renderer/frame/place-route.ts';
import { writePrepare } from '#renderer/frame/prepare-route.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import type { Records } from '#shared-calc/records/records.ts';

/** The view in which an item is done, or from which it follows. */
export function itemLink({ source, job, tub, tick }: TodayItem, { tub: tubs }: Pick<Records, 'tub'>): string {
  switch (source) {
    case 'goods':
    case 'season':
      return writeRoute('run');
    case 'orders':
    case 'store':
      return writeRoute('store');
    case 'quarantine':
    case 'steps':
      return writePrepare(job, 'dates');
    case 'tubs':
    case 'flies':
      return writeRoute('cultures', (tick.is === 'start' ? tick.kind : tubs.get(tub ?? '')?.kind) ?? '');
    case 'quote':
      return writeRoute('quotes', job ?? '');
    case 'enquiry':
    case 'next act':
    case 'house':
    case 'care':
      return writeRoute('jobs', job ?? '');
  }
}
