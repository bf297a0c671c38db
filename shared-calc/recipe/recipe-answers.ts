import { z } from 'zod';

/** Layers, fittings and life that a recipe may have. */
export const recipeParts = [
  'drainage',
  'mesh',
  'capping',
  'soil',
  'litter',
  'background',
  'hardscape',
  'plants',
  'microfauna',
  'light',
  'mist',
] as const;

export type RecipePart = (typeof recipeParts)[number];

const Depth = z
  .union([z.boolean(), z.string()])
  .default(false)
  .describe('false: none; a depth as typed, 40 mm; true: its depth needs a figure, a soil fills up to the dam.');
const Has = z.boolean().default(false);

/** The answers that a new recipe is made of. */
export const RecipeAnswers = z.strictObject({
  drainage: Depth,
  mesh: Has,
  capping: Depth,
  soil: Depth,
  mix: z
    .array(
      z.strictObject({
        what: z
          .string()
          .trim()
          .min(1)
          .describe('coir, bark, fern, charcoal, moss, sand, loam, leaf_mould, pumice, or any other.'),
        parts: z.union([z.number(), z.string()]).optional().describe('Left out: needs a figure.'),
      }),
    )
    .default([]),
  litter: Depth,
  background: Has,
  hardscape: Has,
  plants: Has,
  microfauna: Has,
  light: Has,
  mist: Has,
  animals: z.string().optional().describe('A kind of the animal book; its figures then hold for each size.'),
});

export type RecipeAnswers = z.infer<typeof RecipeAnswers>;
