import { z } from 'zod';

/** `YYYY-MM-DD` */
export const Day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);

export const Coins = z.int().min(0).describe('Whole coins: 650.00 is 65000 where the currency has two decimals.');
