import type { TreatmentAim, TreatmentWay } from './heat/leaf-treatment.ts';
import type { KillScale } from './heat/kill-total.ts';

/** What the core of the leaves must go through. The plan works toward it, and a probe log is measured against it. */
export interface HeatTarget {
  /** Least temperature of the core, degC; a colder minute does not count. */
  readonly coreC: number;
  readonly minutes: number;
  /** Minutes are counted at a reference; without a scale each minute counts once. */
  readonly scale?: KillScale;
  /** The target in words, with its source where it has one. */
  readonly says: string;
}

/** Moist heat of nurseries (UC Davis); dry leaves take 20 K more. Hot water: Runia and Amsing 2001. */
const boiled = clean(85, 3, 'in hot water');
const steamed = clean(82, 30, 'in steam');
const bakedMoist = clean(60, 30, 'moist');
const bakedDry = clean(80, 30, 'not moistened before');

/**
 * Steam sterilising of wrapped goods (CDC 2008). 115 degC is the coolest of the published steam cycles (British
 * Pharmaceutical Codex, 115 degC for 30 min): measured ten-fold steps are 6 to 9 K as often as 10, so the conversion is
 * not trusted further from 121.
 */
const sterileSteam = {
  coreC: 115,
  minutes: 30,
  scale: { reference: 121, step: 10 },
  says: '30 min at 121 degC (wrapped goods), z 10 K',
} as const satisfies HeatTarget;

export const heatTargets = { boiled, steamed, bakedMoist, bakedDry, sterileSteam };

/** Limits of the ways, degC: a pot that boils cooler and an oven that is hotter are refused. */
export const LEAST_BOIL_C = 90;
export const HOTTEST_OVEN_C = 120;
/** The core of a bake is held from here on, well above its target. */
export const BAKED_CORE_C = 90;
/** How much hotter leaves must get that were not moistened before, K. */
export const DRY_EXTRA_K = bakedDry.coreC - bakedMoist.coreC;

export interface HeatAim {
  readonly aim: TreatmentAim;
  readonly way: TreatmentWay;
  /** 16 h before; counts in the oven only. */
  readonly moistened?: boolean | undefined;
}

/** The target of an aim by a way; none where the way cannot reach the aim. */
export function heatTarget({ aim, way, moistened }: HeatAim): HeatTarget | undefined {
  if (aim === 'sterile') return way === 'steam' ? sterileSteam : undefined;
  if (way === 'bake') return moistened === true ? bakedMoist : bakedDry;
  return { boil: boiled, steam: steamed }[way];
}

function clean(coreC: number, minutes: number, how: string): HeatTarget {
  return { coreC, minutes, says: `${minutes} min at ${coreC} degC or over, ${how}` };
}
