import { expect, test } from 'vitest';
import { plantsReplacedDays } from '#shared-calc/jobs/plants-replaced.ts';

const all = { plantsBasicDays: 14, plantsFullDays: 30, plantsShowDays: 90 };

test.each([
  { what: 'one kit has its days', kits: ['full'], promise: all, days: 30 },
  { what: 'a job of several kits has the longest', kits: ['basic', 'show', 'full'], promise: all, days: 90 },
  { what: 'a workshop that promises nothing says nothing', kits: ['full'], promise: {}, days: undefined },
  { what: 'a kit without days has none', kits: ['show'], promise: { plantsFullDays: 30 }, days: undefined },
  {
    what: 'a size without a promise does not get that of another',
    kits: ['full', 'show'],
    promise: { plantsFullDays: 30 },
    days: undefined,
  },
  { what: 'a kit of its own name is promised nothing', kits: ['desert'], promise: all, days: undefined },
  { what: 'no size, no promise', kits: [], promise: all, days: undefined },
])('$what', ({ kits, promise, days }) => {
  expect(plantsReplacedDays(kits, promise)).toBe(days);
});
