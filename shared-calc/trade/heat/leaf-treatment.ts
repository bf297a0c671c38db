export const treatmentWays = ['steam', 'boil', 'bake'] as const;
export const treatmentAims = ['clean', 'sterile'] as const;
export type TreatmentWay = (typeof treatmentWays)[number];
export type TreatmentAim = (typeof treatmentAims)[number];

/** What to treat and with what. Defaults: the usual vessel of the way, 15 psi of steam, an oven at 105 degC. */
export interface LeafTreatment {
  readonly way: TreatmentWay;
  readonly aim: TreatmentAim;
  /** Loose litres. */
  readonly leavesL: number;
  readonly altitudeM: number;
  readonly vesselL?: number;
  /** Share of the vessel. */
  readonly fill?: number;
  /** Of the steam, kPa. */
  readonly gaugeKpa?: number;
  readonly ovenC?: number;
  /** 16 h before. */
  readonly moistened?: boolean;
  /** The tray in the oven stands uncovered. */
  readonly open?: boolean;
  /** Water in the steam vessel at the start, and its heating power. */
  readonly steamWaterL?: number;
  readonly steamPowerKw?: number;
  /** Power that reaches the leaves in the oven. */
  readonly ovenPowerW?: number;
}

const usualLoads = {
  steam: { vesselL: 21, fill: 0.6 },
  boil: { vesselL: 21, fill: 0.6 },
  bake: { vesselL: 60, fill: 0.5 },
} as const;

/** 15 psi in kPa. */
export const USUAL_GAUGE_KPA = 103.42135939752;
export const USUAL_OVEN_C = 105;
/** Into the load; from memory. */
export const USUAL_OVEN_W = 300;

/** The vessel and how full it is loaded: as given, otherwise the usual one of the way. */
export function loadOf({ way, vesselL, fill }: LeafTreatment): { readonly vesselL: number; readonly fill: number } {
  const usual = usualLoads[way];
  return { vesselL: vesselL ?? usual.vesselL, fill: fill ?? usual.fill };
}

/**
 * Sterile needs steam. Clean: bake if the leaves were moistened 16 h before, otherwise boil, as dry leaves need up to
 * 20 K more than moist ones.
 */
export function suggestWay(aim: TreatmentAim, moistened: boolean): TreatmentWay {
  if (aim === 'sterile') return 'steam';
  return moistened ? 'bake' : 'boil';
}
