import { code, count, data, money, orEmpty, weekdays, within, words } from './field.ts';
import { PriceListMap } from './price-list-map.ts';

const leadBounds = { low: 0, high: 365 };

export const supplier = {
  id: code('Code', { list: 'supplier' }),
  name: words('Supplier', { list: 'name', needed: true }),
  sells: words('Sells', { list: 'sells' }),
  leadDays: within(count('Lead, working days', { called: 'Lead', list: 'lead', fresh: 3, ...leadBounds }), (any) =>
    any.min(0),
  ),
  tankLeadDays: orEmpty(
    within(
      count('Lead of tanks, working days', {
        called: 'Lead of tanks',
        list: 'tank lead',
        help: 'where tanks take longer than the rest',
        ...leadBounds,
      }),
      (any) => any.min(0),
    ),
  ),
  carriageCoins: money('Carriage', { list: 'carriage' }),
  freeFromCoins: orEmpty(money('Free from', { list: 'free from', help: 'goods worth this much travel free' })),
  minimumCoins: orEmpty(money('Minimum', { list: 'minimum' })),
  deliveryWeekdays: orEmpty(weekdays('Comes on', { list: 'days', empty: 'any open day' })),
  note: words('Note', { list: 'note' }),
  priceList: orEmpty(data('How its price lists are read', PriceListMap)),
};
