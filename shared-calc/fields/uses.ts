import { keysOf } from './keys-of.ts';

/** A quantity that the program itself reads from a recipe line. Code looks up the use, never a line by its name. */
export interface Use {
  /** The kind that its line must have, by name, and its usual unit. */
  readonly kind: string;
  readonly unit: string;
  /** A recipe may lack it: then the tank has no such thing, and nothing is shown for it. */
  readonly optional?: true;
  /** Expected only in a recipe that has a line for this other use. */
  readonly goesWith?: string;
  readonly what: string;
  /** The words for it if a recipe lacks it; by default its name in words. */
  readonly noun?: string;
}

/** The closed list of uses. A recipe has at most one line for a use. */
export const uses = {
  publicSite: { kind: 'yes_no', unit: 'yes_no', optional: true, what: 'Whether strangers can reach the tank' },
  shelfRating: { kind: 'mass', unit: 'kg', what: 'What the shelf is rated for' },
  shelfShare: { kind: 'share', unit: '%', optional: true, what: 'Share of the shelf rating that is used' },
  roomSummer: { kind: 'temperature', unit: 'degC', optional: true, what: 'Room on the hottest day' },
  roomLowest: { kind: 'temperature', unit: 'degC', optional: true, what: 'Room at its coldest' },
  humiditySummer: { kind: 'share', unit: '%', optional: true, what: 'Humidity of the room in summer' },
  sunArea: { kind: 'area', unit: 'm2', optional: true, what: 'Glass that the sun strikes at its worst hour' },
  roomWinter: { kind: 'temperature', unit: 'degC', optional: true, what: 'Heated room in winter' },
  humidityWinter: { kind: 'share', unit: '%', optional: true, what: 'Humidity of the room in winter' },
  kit: {
    kind: 'choice',
    unit: 'choice',
    optional: true,
    what: 'The kit level that a client chooses',
    noun: 'kit level',
  },
  tankShape: { kind: 'choice', unit: 'choice', optional: true, what: 'Shape of the tank' },
  insideLength: { kind: 'length', unit: 'mm', what: 'Inside length of the tank' },
  insideDepth: { kind: 'length', unit: 'mm', what: 'Inside depth of the tank' },
  insideHeight: { kind: 'length', unit: 'mm', what: 'Inside height of the tank' },
  damHeight: { kind: 'length', unit: 'mm', what: 'Height of the front lip that holds the layers' },
  glass: { kind: 'length', unit: 'mm', what: 'Thickness of the walls' },
  baseGlass: { kind: 'length', unit: 'mm', what: 'Thickness of the base' },
  frontBow: { kind: 'length', unit: 'mm', optional: true, what: 'How far the front bows out' },
  sideReturn: { kind: 'length', unit: 'mm', optional: true, what: 'Width of the side returns of a corner tank' },
  frontVent: { kind: 'length', unit: 'mm', optional: true, what: 'Height of the vent strip in the front' },
  overallLength: { kind: 'length', unit: 'mm', what: 'Length of the tank with its bow or corner' },
  overallDepth: { kind: 'length', unit: 'mm', what: 'Depth of the tank with its bow' },
  outsideLength: { kind: 'length', unit: 'mm', what: 'Outside length, for the way in' },
  outsideDepth: { kind: 'length', unit: 'mm', what: 'Outside depth, for the way in' },
  floorArea: { kind: 'area', unit: 'm2', what: 'Floor of the tank' },
  clientTank: { kind: 'yes_no', unit: 'yes_no', optional: true, what: 'Whether the client brings the tank' },
  drainage: { kind: 'length', unit: 'mm', optional: true, what: 'Depth of the drainage layer' },
  drainGap: { kind: 'length', unit: 'mm', goesWith: 'drainage', what: 'Space kept free of water below the mesh' },
  drainRoom: { kind: 'volume', unit: 'L', goesWith: 'drainage', what: 'Water that the drainage holds' },
  meshThickness: { kind: 'length', unit: 'mm', optional: true, what: 'Thickness of the mesh' },
  meshUpturn: { kind: 'length', unit: 'mm', optional: true, what: 'How far the mesh is turned up' },
  meshLength: { kind: 'length', unit: 'mm', optional: true, what: 'Length that the mesh is cut to' },
  meshDepth: { kind: 'length', unit: 'mm', optional: true, what: 'Depth that the mesh is cut to' },
  drainageNeed: { kind: 'volume', unit: 'L', goesWith: 'drainage', what: 'Drainage material needed' },
  capping: { kind: 'length', unit: 'mm', optional: true, what: 'Thickness of the capping' },
  beadWidth: { kind: 'length', unit: 'mm', optional: true, what: 'Width of the clay edge along the glass' },
  beadHeight: { kind: 'length', unit: 'mm', optional: true, what: 'Height of the clay edge along the glass' },
  cappingNeed: { kind: 'volume', unit: 'L', optional: true, what: 'Capping material needed' },
  freeboard: { kind: 'length', unit: 'mm', optional: true, what: 'Room kept free below the lip' },
  soilFront: { kind: 'length', unit: 'mm', optional: true, what: 'Depth of the soil at the front' },
  soilRise: { kind: 'length', unit: 'mm', goesWith: 'soilFront', what: 'How much the soil rises to the back' },
  soilPlaced: { kind: 'volume', unit: 'L', goesWith: 'soilFront', what: 'Soil as placed' },
  mixLoose: { kind: 'volume', unit: 'L', optional: true, what: 'Mix to blend, loose' },
  soilLater: { kind: 'volume', unit: 'L', optional: true, what: 'Loose mix that waits for a second filling' },
  wetting: { kind: 'volume', unit: 'L', optional: true, what: 'Water to wet the mix with' },
  panelDisplaced: { kind: 'volume', unit: 'L', optional: true, what: 'Soil whose room the background takes' },
  dampDepth: { kind: 'length', unit: 'mm', optional: true, what: 'Depth of the damp layer' },
  dampPlaced: { kind: 'volume', unit: 'L', goesWith: 'dampDepth', what: 'Damp layer as placed' },
  coirNeed: { kind: 'volume', unit: 'L', optional: true, what: 'Coir needed' },
  litter: { kind: 'length', unit: 'mm', optional: true, what: 'Depth of the leaf litter' },
  leavesLoose: { kind: 'volume', unit: 'L', optional: true, what: 'Leaves to treat, loose' },
  leavesNeed: { kind: 'mass', unit: 'g', optional: true, what: 'Leaves needed' },
  litterDays: { kind: 'time', unit: 'd', optional: true, what: 'Days until the litter has thinned' },
  pieces: { kind: 'count', unit: 'each', optional: true, what: 'Pieces of wood and cork' },
  panelArea: { kind: 'area', unit: 'm2', optional: true, what: 'Background to glue' },
  panelWidth: { kind: 'length', unit: 'mm', goesWith: 'panelArea', what: 'Width of the background' },
  panelWalls: { kind: 'count', unit: 'each', optional: true, what: 'Walls that have a background' },
  panelCure: {
    kind: 'time',
    unit: 'd',
    goesWith: 'panelArea',
    what: 'Days that a glued background cures',
    noun: 'cure of the background',
  },
  branchesNeed: { kind: 'count', unit: 'each', optional: true, what: 'Branches needed' },
  doorLockNeed: { kind: 'count', unit: 'each', optional: true, what: 'Door locks needed' },
  plants: { kind: 'count', unit: 'each', optional: true, what: 'Plants of a build' },
  groundNeed: { kind: 'count', unit: 'each', optional: true, what: 'Ground plants needed' },
  midNeed: { kind: 'count', unit: 'each', optional: true, what: 'Middle plants needed' },
  featureNeed: { kind: 'count', unit: 'each', optional: true, what: 'Feature plants needed' },
  climberNeed: { kind: 'count', unit: 'each', optional: true, what: 'Climbers needed' },
  epiphyteNeed: { kind: 'count', unit: 'each', optional: true, what: 'Epiphytes needed' },
  plantQuarantine: {
    kind: 'time',
    unit: 'd',
    goesWith: 'plants',
    what: 'Days that new plants stand apart before they are planted',
    noun: 'quarantine',
  },
  springtailSeed: { kind: 'count', unit: 'each', optional: true, what: 'Springtails that a build starts with' },
  springtailTarget: {
    kind: 'count per area',
    unit: 'each/m2',
    optional: true,
    what: 'Springtails wanted when animals go in',
  },
  springtailRoom: {
    kind: 'count per area',
    unit: 'each/m2',
    optional: true,
    what: 'Springtails that a tank has room for',
  },
  springtailRate: { kind: 'rate', unit: '%/d', optional: true, what: 'Daily growth of springtails in a tank' },
  isopodFounders: { kind: 'count', unit: 'each', optional: true, what: 'Isopods that a build starts with' },
  settleIn: { kind: 'time', unit: 'd', what: 'Days from the build until animals go in', noun: 'settle-in time' },
  coverVent: {
    kind: 'length',
    unit: 'mm',
    optional: true,
    what: 'Width of the vent strip that the cover glass leaves',
  },
  coverGlass: { kind: 'length', unit: 'mm', optional: true, what: 'Thickness of the cover glass' },
  coverMax: { kind: 'length', unit: 'mm', optional: true, what: 'Longest cover pane to cut' },
  panes: { kind: 'count', unit: 'each', optional: true, what: 'Cover panes' },
  paneLength: { kind: 'length', unit: 'mm', goesWith: 'panes', what: 'Length of a cover pane' },
  paneDepth: { kind: 'length', unit: 'mm', goesWith: 'panes', what: 'Depth of a cover pane' },
  ventShare: { kind: 'share', unit: '%', optional: true, what: 'Share of the top that is open' },
  airFactor: { kind: 'number', unit: 'number', optional: true, what: 'Air exchange, times what the model says' },
  dampFactor: { kind: 'number', unit: 'number', optional: true, what: 'Damp passed, times what the model says' },
  warmFactor: { kind: 'number', unit: 'number', optional: true, what: 'Warming, times what the model says' },
  airVolume: { kind: 'volume', unit: 'm3', optional: true, what: 'Air in the tank' },
  tankAir: { kind: 'temperature', unit: 'degC', optional: true, what: 'Mean temperature in the tank, winter' },
  airFlow: { kind: 'flow', unit: 'm3/h', optional: true, what: 'Room air that comes in' },
  airChanges: { kind: 'rate', unit: 'each/h', optional: true, what: 'How often the air of the tank changes' },
  evaporating: { kind: 'flow', unit: 'm3/h', optional: true, what: 'Air that soil and plants could make damp' },
  tankHumidity: { kind: 'share', unit: '%', optional: true, what: 'Mean humidity in the tank, winter' },
  humidityLowest: { kind: 'share', unit: '%', optional: true, what: 'Humidity before the next misting, winter' },
  bandLow: {
    kind: 'share',
    unit: '%',
    optional: true,
    what: 'Lowest humidity its animals stand',
    noun: 'lowest humidity',
  },
  bandHigh: {
    kind: 'share',
    unit: '%',
    optional: true,
    what: 'Highest humidity its animals stand',
    noun: 'highest humidity',
  },
  dipAllowed: {
    kind: 'share',
    unit: '%',
    optional: true,
    what: 'How far the humidity may fall below the band before the next misting',
    noun: 'dip between mistings',
  },
  vapourWinter: { kind: 'flow', unit: 'mL/d', optional: true, what: 'Water that leaves as vapour in winter' },
  vapourSummer: { kind: 'flow', unit: 'mL/d', optional: true, what: 'Water that leaves as vapour in summer' },
  lamps: { kind: 'count', unit: 'each', optional: true, what: 'Lamps of a build' },
  lampPower: { kind: 'power', unit: 'W', goesWith: 'lamps', what: 'Power of a lamp' },
  lightHours: { kind: 'number', unit: 'h/d', goesWith: 'lamps', what: 'Hours that the lamps are on' },
  lightPerLamp: {
    kind: 'light per area',
    unit: 'mol/m2/d',
    goesWith: 'lamps',
    what: 'Light that one lamp gives at the plants',
  },
  lightTarget: {
    kind: 'light per area',
    unit: 'mol/m2/d',
    goesWith: 'lamps',
    what: 'Light that is wanted at the plants',
  },
  lightWarmingUp: { kind: 'temperature step', unit: 'K', optional: true, what: 'How much the lamps warm the tank' },
  lampHeatShare: { kind: 'share', unit: '%', optional: true, what: 'Share of the lamps’ power that warms the tank' },
  hottestDay: { kind: 'temperature', unit: 'degC', what: 'Tank air on the hottest day' },
  speciesFloor: {
    kind: 'temperature',
    unit: 'degC',
    what: 'Lowest temperature its animals stand',
    noun: 'floor of the animals',
  },
  speciesCeiling: {
    kind: 'temperature',
    unit: 'degC',
    what: 'Highest temperature its animals stand',
    noun: 'ceiling of the animals',
  },
  speciesEmergency: {
    kind: 'temperature',
    unit: 'degC',
    optional: true,
    what: 'Temperature above which its animals are in danger at once',
    noun: 'emergency temperature',
  },
  screenUnderLamps: { kind: 'yes_no', unit: 'yes_no', optional: true, what: 'Whether a screen is under the lamps' },
  nozzles: { kind: 'count', unit: 'each', optional: true, what: 'Mist nozzles' },
  mist: { kind: 'flow', unit: 'mL/d', goesWith: 'nozzles', what: 'Mist of a day' },
  mistTime: { kind: 'time', unit: 's', goesWith: 'nozzles', what: 'Length of a mist' },
  mistCycles: { kind: 'rate', unit: 'each/d', goesWith: 'nozzles', what: 'Mists a day' },
  mistCutOff: {
    kind: 'yes_no',
    unit: 'yes_no',
    optional: true,
    what: 'Whether a valve against siphoning and a limit on run time are fitted',
  },
  handMist: { kind: 'flow', unit: 'mL/d', optional: true, what: 'Water misted by hand' },
  reservoir: { kind: 'volume', unit: 'L', goesWith: 'nozzles', what: 'Water in the mist can' },
  refillDays: { kind: 'time', unit: 'd', goesWith: 'nozzles', what: 'Days until the mist can is empty' },
  drainDays: { kind: 'time', unit: 'd', optional: true, what: 'Days until the drainage is full' },
  drainAccess: {
    kind: 'choice',
    unit: 'choice',
    optional: true,
    what: 'How the drainage is emptied: none, tube or tap',
  },
  drainTapNeed: { kind: 'count', unit: 'each', optional: true, what: 'Drain taps needed' },
  drainTubeNeed: { kind: 'count', unit: 'each', optional: true, what: 'Siphon tubes needed' },
  fanNeed: { kind: 'count', unit: 'each', optional: true, what: 'Fans needed' },
  testLitres: { kind: 'volume', unit: 'L', optional: true, what: 'Water of the leak test' },
  testMass: { kind: 'mass', unit: 'kg', optional: true, what: 'Weight of the tank and the water of its leak test' },
  filledMass: { kind: 'mass', unit: 'kg', what: 'Weight of the filled tank' },
  worstMass: { kind: 'mass', unit: 'kg', optional: true, what: 'Weight of the filled tank with its drain blocked' },
  shelfLoad: { kind: 'pressure', unit: 'kPa', optional: true, what: 'Load of the filled tank on its shelf' },
  crewEmpty: { kind: 'count', unit: 'each', what: 'People to lift the empty tank', noun: 'crew for the empty tank' },
  crewFilled: { kind: 'count', unit: 'each', what: 'People to lift the filled tank', noun: 'crew for the filled tank' },
  learning: {
    kind: 'share',
    unit: '%',
    optional: true,
    what: 'What each doubling of like builds takes of the minutes',
  },
} as const satisfies Readonly<Record<string, Use>>;

export type UseName = keyof typeof uses;

export const useNames = keysOf(uses);

export function isUse(name: string): name is UseName {
  return Object.hasOwn(uses, name);
}

/** The entry of a use with its open fields. */
export function useOf(name: UseName): Use {
  return uses[name];
}

/** "quarantine" of `plantQuarantine`, as in "No quarantine is given in this recipe". */
export function nounOf(name: UseName): string {
  return useOf(name).noun ?? name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** Groups of lines that the program reads together; a line may be in several. */
export const lineTags = {
  leaves: 'Leaves from the store of the year, which are treated before they go in',
  mass: 'A part of the filled weight that a builder can make lighter',
  layer: 'A layer of the section drawing, in its place of the stack',
  survey: 'Asked where the tank is to stand',
} as const;

export type LineTag = keyof typeof lineTags;
export const lineTagNames = ['leaves', 'mass', 'layer', 'survey'] as const satisfies readonly LineTag[];

/** Where a line belongs: a layer in the stack of the section drawing, a need in the steps of a build. */
export const linePlaces = [
  'tank',
  'background',
  'drainage',
  'mesh',
  'capping',
  'mix',
  'soil',
  'inoculate',
  'hardscape',
  'plants',
  'microfauna',
  'litter',
  'cover',
  'lamps',
  'misting',
  'look over',
  'delivery',
] as const;
export type LinePlace = (typeof linePlaces)[number];

/** Parts of the sheet of checks, in display order. */
export const checkParts = ['air', 'water', 'light', 'weight', 'lifting', 'stack', 'other'] as const;
export type CheckPart = (typeof checkParts)[number];

/** What may fix a check that does not hold: each is a series of changes, the smallest first. */
export const cureNames = [
  'screen out',
  'fewer lamps',
  'less soil',
  'less drainage',
  'fewer branches',
  'no background',
  'thinner capping',
  'less mist',
  'more mist',
  'shorter mist',
  'wider strip',
  'narrower strip',
  'more plants',
  'lamps lifted',
  'more clearance',
  'thicker cover',
  'shorter panes',
  'siphon tube',
  'drain tap',
  'mist cut-off',
  'less litter',
  'more litter',
  'smaller upturn',
] as const;
export type CureName = (typeof cureNames)[number];
