import { describe, expect, test } from 'vitest';
import { sayPriceFault, type PriceFault } from '#shared-calc/price/price-fault.ts';

describe('sayPriceFault', () => {
  test.each<{ fault: PriceFault; says: string }>([
    {
      fault: { kind: 'margin-too-high', group: 'media', label: 'Media', margin: 1.2 },
      says: "Media: Margin is a share of the price and stays below 1. For 'add 60 %' use mark-up.",
    },
    {
      fault: { kind: 'share-too-high', figure: 'discount', share: 1 },
      says: 'The discount is a share of the price and stays below 1.',
    },
    {
      fault: { kind: 'no-margin', group: 'stone' },
      says: 'No margin for the quote group stone: add one in the rate book.',
    },
    {
      fault: { kind: 'no-tax-class', taxClass: 'books' },
      says: 'No tax class called books: add one in the rate book.',
    },
    { fault: { kind: 'refused', says: 'The step cannot be below zero.' }, says: 'The step cannot be below zero.' },
  ])('$says', ({ fault, says }) => {
    expect(sayPriceFault(fault)).toBe(says);
  });
});
