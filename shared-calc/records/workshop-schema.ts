import { z } from 'zod';

const Words = z.string().max(2_000);
const Text = z.string().max(10_000);
const Share = z.number().min(0).max(1);

/** What holds for the whole house: its letterhead, its money, its days and its habits. */
export const WorkshopSchema = z.strictObject({
  id: z.literal('workshop'),
  name: Words,
  place: Words,
  /** Letterhead, terms and how to pay, as printed on a quote. */
  letterhead: Text,
  terms: Text,
  payment: Text,
  /** ISO 4217 code, or the demo's plain `cr`. */
  currency: z.string().min(1).max(3),
  coinDecimals: z.int().min(0).max(4),
  altitudeM: z.number(),
  /** Per kind name the unit shown instead of the line's own: `{ length: 'in' }`. */
  unitsShown: z.record(z.string(), z.string()),
  decimalComma: z.boolean(),
  oldPriceDays: z.int().min(1),
  openWeekdays: z.array(z.int().min(1).max(7)).min(1),
  depositShare: Share,
  depositStepCoins: z.int().min(1),
  quoteValidDays: z.int().min(1),
  contingencyShare: Share,
  warrantyShare: Share,
  plantLossShare: Share,
  discountShare: Share,
  /** 0: the price is not rounded to a step. */
  priceStepCoins: z.int().min(0),
  pressureKpa: z.number(),
  /** What clients pay to run a tank, in the currency, with parts of a coin; left out while nobody has asked. */
  electricityPerKwh: z.number().min(0).optional(),
  waterPerL: z.number().min(0).optional(),
});
