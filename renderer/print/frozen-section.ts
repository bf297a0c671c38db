import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import type { QuoteSize } from '#shared-calc/papers/quote-sizes.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { tankShapes, type Line } from '#shared-calc/records/records.ts';

/** Lines that a section is drawn from; a recipe that has none of a layer does without it. */
const lines: Readonly<Record<Exclude<keyof SectionFigures, 'shape' | 'lamps'>, readonly string[]>> = {
  overallDepth: ['overall_depth'],
  insideHeight: ['inside_height'],
  damHeight: ['dam_height'],
  glass: ['glass'],
  baseGlass: ['base_glass'],
  frontBow: ['front_bow'],
  sideReturn: ['side_return'],
  frontVent: ['front_vent'],
  drainage: ['drainage'],
  drainGap: ['drain_gap'],
  meshThickness: ['mesh_thickness'],
  meshUpturn: ['mesh_upturn'],
  capping: ['capping'],
  beadWidth: ['bead_width'],
  beadHeight: ['bead_height'],
  soilFront: ['soil_front', 'damp_depth'],
  soilRise: ['soil_rise'],
  litter: ['litter'],
  coverVent: ['cover_vent'],
};

/** The section of a size from the figures that a quote was issued with, in mm. */
export function frozenSection({ shape, figures }: QuoteSize, recipe: readonly Line[]): SectionFigures {
  const valueOf = (names: readonly string[], unit: string): number | undefined => {
    const line = recipe.find((each) => names.includes(each.name));
    if (!line) return 0;
    const value = figures[line.name];
    return typeof value === 'number' ? fromBase(toBase(value, unitOf(line.unit)), unitOf(unit)) : undefined;
  };
  const mm = (part: keyof typeof lines) => valueOf(lines[part], 'mm');
  return {
    shape: tankShapes.find((each) => each === shape) ?? 'rectangle',
    overallDepth: mm('overallDepth'),
    insideHeight: mm('insideHeight'),
    damHeight: mm('damHeight'),
    glass: mm('glass'),
    baseGlass: mm('baseGlass'),
    frontBow: mm('frontBow'),
    sideReturn: mm('sideReturn'),
    frontVent: mm('frontVent'),
    drainage: mm('drainage'),
    drainGap: mm('drainGap'),
    meshThickness: mm('meshThickness'),
    meshUpturn: mm('meshUpturn'),
    capping: mm('capping'),
    beadWidth: mm('beadWidth'),
    beadHeight: mm('beadHeight'),
    soilFront: mm('soilFront'),
    soilRise: mm('soilRise'),
    litter: mm('litter'),
    coverVent: mm('coverVent'),
    lamps: valueOf(['lamps'], 'each'),
  };
}
