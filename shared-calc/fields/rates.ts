import { choice, code, count, day, figure, money, reference, share, words } from './field.ts';

export const rate = { id: code(), label: words('Rate'), coins: money('Amount'), per: choice('for each', ['h', 'km']) };

export const margin = {
  id: code(),
  label: words('Group, as the quote says it'),
  share: figure('Margin of the price', 'share', { low: 0, high: 0.95 }),
  taxClass: reference('Tax class', ['taxClass']),
  order: count('Place on the quote', { low: 0, high: 999 }),
};

export const taxClass = { id: code(), label: words('Class'), share: share('Tax', { low: 0, high: 1 }) };

export const closedDay = { id: code(), from: day('First day'), to: day('Last day'), label: words('Why') };
