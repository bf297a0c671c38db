import { keysOf } from '#shared-calc/fields/keys-of.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { CautionId } from './all-cautions.ts';
import type { Hazard } from './hazards.ts';

/** A caution of an act; `when` is a use without which there is no such thing, `unless` one that makes it unnecessary. */
export type CautionOf = CautionId | { readonly id: CautionId; readonly when?: UseName; readonly unless?: UseName };

/** What a person does. Its cautions must be against every hazard that it declares; a gate test holds that. */
export interface HazardousAct {
  readonly hazards: readonly Hazard[];
  readonly cautions: readonly CautionOf[];
}

/** An act that hurts nobody: ordering, telephoning. */
const harmless: HazardousAct = { hazards: [], cautions: [] };

/** The steps of a build, by their place; `handOver` and `besides` have none. */
export const buildActs = {
  tank: {
    hazards: ['lifting', 'sharp edges', 'standing water'],
    cautions: [
      'tankSeams',
      'lifting',
      'glassEdges',
      { id: 'leakTest', when: 'drainRoom' },
      { id: 'standingBuckets', when: 'drainRoom' },
      { id: 'drilledGlass', when: 'drainTapNeed' },
    ],
  },
  background: {
    hazards: ['sealant', 'drilling and sanding', 'sharp edges'],
    cautions: ['foamAndSealant', 'drilling', 'glassEdges'],
  },
  drainage: { hazards: ['dust', 'standing water', 'lifting'], cautions: ['mineralDust', 'drainage', 'heavyBags'] },
  mesh: { hazards: ['sharp edges'], cautions: ['glassEdges'] },
  capping: { hazards: ['dust', 'lifting'], cautions: ['mineralDust', 'heavyBags'] },
  mix: {
    hazards: ['dust', 'lifting'],
    cautions: ['mixParts', 'mineralDust', 'organicDust', { id: 'coirSalt', when: 'coirNeed' }, 'heavyBags'],
  },
  soil: { hazards: ['dust'], cautions: ['organicDust', 'water'] },
  inoculate: { hazards: ['dust'], cautions: ['inoculant', 'water'] },
  hardscape: {
    hazards: ['heavy pieces', 'drilling and sanding', 'dust'],
    cautions: ['heavyPieces', 'drilling', 'collectedKinds'],
  },
  plants: { hazards: ['animals', 'small children'], cautions: ['plantDips', 'poisonPlants', 'hands'] },
  microfauna: { hazards: ['animals'], cautions: ['microfauna', 'neverRelease'] },
  litter: { hazards: ['wild-collected'], cautions: ['collecting', 'collectedKinds', 'cleanIsEnough', 'neverPromise'] },
  cover: {
    hazards: ['sharp edges', 'small children'],
    cautions: ['coverGlass', { id: 'coverRail', unless: 'screenUnderLamps' }, 'openings', 'glassEdges'],
  },
  lamps: { hazards: ['electricity near water', 'heat'], cautions: ['lampHeat', 'electrics', 'unplug'] },
  misting: {
    hazards: ['electricity near water', 'standing water'],
    cautions: [
      { id: 'mistPump', when: 'nozzles' },
      { id: 'reservoir', when: 'nozzles' },
      'electrics',
      'unplug',
      'standingBuckets',
      'water',
    ],
  },
  'look over': {
    hazards: ['cleaning agents', 'electricity near water', 'small children'],
    cautions: ['sprays', 'unplug', 'tipping', { id: 'lockedDoor', when: 'publicSite' }],
  },
  delivery: {
    hazards: ['lifting', 'road', 'sharp edges', 'animals', 'small children'],
    cautions: ['roadLoad', 'lifting', 'glassEdges', 'buildingLoad', 'tipping', 'animalTransport'],
  },
  handOver: harmless,
  besides: harmless,
} as const satisfies Readonly<Record<string, HazardousAct>>;

export type BuildAct = keyof typeof buildActs;

/** What a prep plan does on a day; `order` is any order to a supplier. */
export const prepActs = {
  order: harmless,
  tank: { hazards: ['lifting', 'sharp edges'], cautions: ['tankSeams', 'lifting', 'glassEdges'] },
  panel: { hazards: ['sealant', 'drilling and sanding'], cautions: ['foamAndSealant', 'drilling'] },
  hardscape: {
    hazards: ['heavy pieces', 'wild-collected', 'sealant'],
    cautions: ['heavyPieces', 'collecting', 'collectedKinds', 'storedFoam'],
  },
  plants: { hazards: ['animals', 'small children'], cautions: ['plantDips', 'poisonPlants'] },
  springtails: { hazards: ['animals'], cautions: ['microfauna', 'neverRelease'] },
  media: {
    hazards: ['dust', 'lifting'],
    cautions: ['mixParts', 'coirSalt', 'mineralDust', 'organicDust', 'heavyBags'],
  },
  panes: { hazards: ['sharp edges', 'small children'], cautions: ['coverGlass', 'glassEdges'] },
  lamps: { hazards: ['electricity near water'], cautions: ['electrics'] },
  leaves: {
    hazards: ['heat', 'boiling water', 'steam under pressure', 'wild-collected'],
    cautions: ['treatingHeat', 'collecting', 'collectedKinds', 'cleanIsEnough', 'neverPromise'],
  },
  build: { hazards: ['lifting', 'sharp edges'], cautions: ['lifting', 'glassEdges'] },
  handover: {
    hazards: ['animals', 'road', 'lifting'],
    cautions: ['roadLoad', 'lifting', 'animalTransport', 'animalsIn'],
  },
} as const satisfies Readonly<Record<string, HazardousAct>>;

/** Treating leaves, by the way. */
export const treatActs = {
  steam: {
    hazards: ['steam under pressure', 'heat', 'small children'],
    cautions: ['treatingHeat', 'steamVent', 'steamOpening', 'steamVessel', 'steamLoad'],
  },
  boil: { hazards: ['boiling water', 'heat', 'lifting', 'small children'], cautions: ['boilingWater', 'hotDraining'] },
  bake: { hazards: ['heat', 'small children'], cautions: ['ovenAttended', 'ovenMoist'] },
} as const satisfies Readonly<Record<string, HazardousAct>>;

/** What is done where the tank stands, before and after it is handed over. */
export const siteActs = {
  survey: {
    hazards: ['lifting', 'electricity near water', 'animals', 'small children', 'permits'],
    cautions: [
      'peopleAtRisk',
      'protectedKinds',
      'buildingLoad',
      'tipping',
      'tooCold',
      'tooWarm',
      'electrics',
      'lockedDoor',
      'lifting',
    ],
  },
  watch: {
    hazards: ['electricity near water', 'animals', 'standing water'],
    cautions: ['warmthGuess', 'tooWarm', 'tooCold', { id: 'drainage', when: 'drainRoom' }, 'electrics', 'unplug'],
  },
  animalsIn: {
    hazards: ['animals', 'permits', 'road', 'small children'],
    cautions: [
      'animalsIn',
      'quarantine',
      'protectedKinds',
      'feeding',
      'hands',
      'unplug',
      'animalTransport',
      'peopleAtRisk',
    ],
  },
  /** In the order of who decides, which the card names once for neighbours. */
  keeping: {
    hazards: [
      'animals',
      'cleaning agents',
      'electricity near water',
      'sharp edges',
      'small children',
      'standing water',
    ],
    cautions: [
      'unplug',
      'electrics',
      'hands',
      'peopleAtRisk',
      'feeding',
      'tooCold',
      'lampHeat',
      'cleaning',
      'water',
      { id: 'reservoir', when: 'nozzles' },
      'tooWarm',
      'sprays',
      'standingBuckets',
      { id: 'drainage', when: 'drainRoom' },
      'coverGlass',
      'openings',
      { id: 'lockedDoor', when: 'publicSite' },
      'tipping',
      'neverRelease',
      'wasteWater',
      'death',
    ],
  },
  visit: {
    hazards: ['animals', 'cleaning agents', 'electricity near water', 'standing water'],
    cautions: [
      'unplug',
      'tools',
      'cleaning',
      'hands',
      { id: 'drainage', when: 'drainRoom' },
      { id: 'reservoir', when: 'nozzles' },
      'standingBuckets',
      'wasteWater',
      'diseaseWaste',
      'quarantine',
    ],
  },
  call: harmless,
  round: {
    hazards: ['animals', 'road', 'cleaning agents', 'electricity near water', 'standing water'],
    cautions: [
      'unplug',
      'tools',
      'cleaning',
      'hands',
      'standingBuckets',
      'wasteWater',
      'diseaseWaste',
      'animalTransport',
      'roadLoad',
    ],
  },
  /** Fetching what a shopping run buys. */
  fetching: { hazards: ['road', 'lifting'], cautions: ['roadLoad', 'heavyBags'] },
  lampsDue: { hazards: ['electricity near water', 'heat'], cautions: ['unplug', 'electrics', 'lampHeat'] },
} as const satisfies Readonly<Record<string, HazardousAct>>;

/** What whoever keeps the tank repeats. */
export const careActs = {
  drain: {
    hazards: ['electricity near water', 'standing water', 'animals'],
    cautions: [
      'unplug',
      { id: 'drainage', when: 'drainRoom' },
      'hands',
      'standingBuckets',
      'wasteWater',
      'diseaseWaste',
    ],
  },
  'refill and clean': {
    hazards: ['electricity near water', 'standing water', 'cleaning agents'],
    cautions: ['unplug', 'water', { id: 'reservoir', when: 'nozzles' }, 'cleaning', 'standingBuckets'],
  },
  'look at the leaves': { hazards: ['animals'], cautions: ['hands'] },
  'top up leaves': {
    hazards: ['wild-collected', 'animals', 'electricity near water'],
    cautions: ['unplug', 'hands', 'collecting', 'collectedKinds'],
  },
} as const satisfies Readonly<Record<string, HazardousAct>>;

/** Keeping cultures, and what is given out of them. */
export const cultureActs = {
  tubs: { hazards: ['animals', 'permits'], cautions: ['microfauna', 'neverRelease', 'sentLive'] },
  flies: { hazards: ['animals', 'permits'], cautions: ['feeding', 'microfauna', 'neverRelease', 'sentLive'] },
} as const satisfies Readonly<Record<string, HazardousAct>>;

/** Goods that come in, by the place of the build they go to. */
export const storeActs = {
  tank: { hazards: ['lifting', 'sharp edges'], cautions: ['tankSeams', 'lifting', 'glassEdges'] },
  background: { hazards: ['sealant', 'small children'], cautions: ['storedFoam'] },
  drainage: { hazards: ['dust', 'lifting'], cautions: ['mineralDust', 'heavyBags'] },
  mesh: { hazards: ['sharp edges'], cautions: ['glassEdges'] },
  capping: { hazards: ['dust', 'lifting'], cautions: ['mineralDust', 'heavyBags'] },
  mix: { hazards: ['dust', 'lifting'], cautions: ['organicDust', 'mineralDust', 'heavyBags'] },
  soil: { hazards: ['dust', 'lifting'], cautions: ['organicDust', 'heavyBags'] },
  inoculate: { hazards: ['dust'], cautions: ['inoculant'] },
  hardscape: { hazards: ['heavy pieces', 'wild-collected'], cautions: ['heavyPieces', 'collecting', 'collectedKinds'] },
  plants: { hazards: ['animals', 'small children'], cautions: ['plantDips', 'poisonPlants'] },
  microfauna: { hazards: ['animals', 'permits'], cautions: ['microfauna', 'neverRelease', 'sentLive'] },
  litter: { hazards: ['wild-collected'], cautions: ['collecting', 'collectedKinds'] },
  cover: { hazards: ['sharp edges', 'small children'], cautions: ['coverGlass', 'glassEdges'] },
  lamps: { hazards: ['electricity near water'], cautions: ['electrics'] },
  misting: { hazards: ['electricity near water'], cautions: ['electrics'] },
  'look over': harmless,
  delivery: harmless,
} as const satisfies Readonly<Record<string, HazardousAct>>;

/** Goods of any build that are bought, fetched and come in. */
const goods: HazardousAct = {
  hazards: [...new Set(keysOf(storeActs).flatMap((place): readonly Hazard[] => storeActs[place].hazards))],
  cautions: [...new Set(keysOf(storeActs).flatMap((place): readonly CautionOf[] => storeActs[place].cautions))],
};

/** What concerns a client who chooses a tank for a place of theirs; each is `onQuote`. */
const offer = {
  hazards: ['animals', 'electricity near water', 'small children'],
  cautions: ['peopleAtRisk', 'electrics', 'tipping'],
} as const satisfies HazardousAct;

/** Papers about goods and money. Of the cautions of goods each carries those of the places its goods go to. */
export const paperActs = {
  quote: offer,
  options: offer,
  inside: offer,
  needs: goods,
  pick: goods,
  order: goods,
  run: {
    hazards: [...goods.hazards, ...siteActs.fetching.hazards],
    cautions: [...siteActs.fetching.cautions, ...goods.cautions],
  },
} as const satisfies Readonly<Record<string, HazardousAct>>;
