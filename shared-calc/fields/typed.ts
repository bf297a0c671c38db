import { z } from 'zod';

import { data, orEmpty } from './field.ts';

/**
 * Figures of the record as a person wrote them, by the key of the field: `2 ft 6 in`, with a point for the decimals.
 * A text counts only while it reads as the stored figure (`records/typed-figure.ts`).
 */
export const typedFields = {
  typed: orEmpty(data('As typed', z.record(z.string(), z.string().min(1).max(200)))),
};
