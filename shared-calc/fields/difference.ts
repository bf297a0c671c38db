import { z } from 'zod';

import { choice, code, data, orEmpty, reference } from './field.ts';
import { line } from './recipe.ts';

const { id: _id, recipe: _recipe, name: _name, ...held } = line;

type Held = typeof held;
type Loose = { -readonly [K in keyof Held]: z.ZodOptional<z.ZodNullable<Held[K]['schema']>> };

/** Some fields of a line; null where the line has no value. Its name is the same in the whole family. */
const LineFields = z.strictObject(
  Object.fromEntries(Object.entries(held).map(([key, { schema }]) => [key, z.nullable(schema).optional()])) as Loose,
);

/** What a recipe changes of a line that it inherits, or of any of its lines for some tanks alone. */
export const difference = {
  id: code(),
  recipe: reference('Recipe', ['recipe']),
  /** The id of the line in this recipe. */
  line: code('Line'),
  what: choice('What differs', ['changed', 'left out']),
  /** What the line has here, if it is changed. */
  fields: data('Has here', LineFields, { fresh: {} }),
  /** What the line above had when the difference was made, or last compared: these fields, or all if it is left out. */
  was: data('Had above', LineFields, { fresh: {} }),
  for: orEmpty(data('For these tanks', z.array(code().schema).min(1))),
};

export type HeldFields = z.infer<typeof LineFields>;
