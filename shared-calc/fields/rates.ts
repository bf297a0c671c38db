import { choice, code, count, day, figure, money, orEmpty, reference, share, words } from './field.ts';
import { sourceFields } from './source.ts';

export const rate = {
  id: code(),
  label: words('Rate', { needed: true }),
  coins: orEmpty(money('Amount')),
  per: choice('for each', ['h', 'km'], { labels: { h: 'hour' } }),
  ...sourceFields,
};

export const margin = {
  id: code(),
  label: words('Group, as the quote says it', { needed: true }),
  share: orEmpty(figure('Margin of the price', 'share', { called: 'Margin', shown: '%', low: 0, high: 0.95 })),
  taxClass: reference('Tax class', ['taxClass']),
  order: count('Place on the quote', { called: 'Place', low: 0, high: 999 }),
};

export const taxClass = { id: code(), label: words('Class', { needed: true }), share: orEmpty(share('Tax')) };

export const closedDay = { id: code(), from: day('First day'), to: day('Last day'), label: words('Why') };
