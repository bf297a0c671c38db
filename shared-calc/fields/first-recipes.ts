import { figureKindOfUnit, kindOfUnit, sayKind } from '#shared-calc/quantity/kind.ts';
import { findUnit } from '#shared-calc/quantity/unit.ts';
import { uses, type CheckPart, type CureName, type LinePlace, type LineTag, type UseName } from './uses.ts';

/*
 * Books up to version 2, and quotes issued from them, have lines without a use: the program knew them by name and by
 * section. Only the migration to version 3 and the reader of such a quote use this file; it never changes.
 */

/** What a line declares since version 3. */
export interface Declared {
  readonly use?: UseName;
  readonly as?: LineTag[];
  readonly place?: LinePlace;
  readonly part?: CheckPart;
  readonly cures?: CureName[];
}

type NamedLine = Readonly<{ use?: UseName; as?: LineTag[]; place?: LinePlace; part?: CheckPart; cures?: CureName[] }>;

const byName: Readonly<Record<string, NamedLine>> = {
  public_site: { use: 'publicSite' },
  shelf_share: { use: 'shelfShare' },
  room_summer: { use: 'roomSummer' },
  room_lowest: { use: 'roomLowest' },
  humidity_summer: { use: 'humiditySummer' },
  sun_area: { use: 'sunArea' },
  shelf_rating: { use: 'shelfRating' },
  kit: { use: 'kit' },
  tank_shape: { use: 'tankShape' },
  inside_length: { use: 'insideLength' },
  inside_depth: { use: 'insideDepth' },
  inside_height: { use: 'insideHeight' },
  front_bow: { use: 'frontBow' },
  side_return: { use: 'sideReturn' },
  dam_height: { use: 'damHeight' },
  front_vent: { use: 'frontVent' },
  glass: { use: 'glass' },
  base_glass: { use: 'baseGlass' },
  floor_area: { use: 'floorArea' },
  overall_length: { use: 'overallLength' },
  overall_depth: { use: 'overallDepth' },
  outside_length: { use: 'outsideLength' },
  outside_depth: { use: 'outsideDepth' },
  client_tank: { use: 'clientTank' },
  tank_need: { place: 'tank' },
  drainage: { use: 'drainage', as: ['layer'], place: 'drainage' },
  drainage_need: { use: 'drainageNeed', place: 'drainage' },
  drain_gap: { use: 'drainGap' },
  drain_room: { use: 'drainRoom' },
  mesh_thickness: { use: 'meshThickness' },
  mesh_upturn: { use: 'meshUpturn' },
  mesh_length: { use: 'meshLength' },
  mesh_depth: { use: 'meshDepth' },
  mesh_need: { place: 'mesh' },
  capping: { use: 'capping', as: ['layer'], place: 'capping' },
  bead_width: { use: 'beadWidth' },
  bead_height: { use: 'beadHeight' },
  capping_need: { use: 'cappingNeed', place: 'capping' },
  soil_front: { use: 'soilFront', as: ['layer'], place: 'soil' },
  soil_rise: { use: 'soilRise' },
  panel_displaced: { use: 'panelDisplaced' },
  soil_placed: { use: 'soilPlaced' },
  mix_loose: { use: 'mixLoose' },
  coir_need: { use: 'coirNeed' },
  wetting: { use: 'wetting' },
  inoculant_need: { place: 'inoculate' },
  litter: { use: 'litter', as: ['layer'], place: 'litter' },
  leaves_need: { use: 'leavesNeed' },
  leaves_loose: { use: 'leavesLoose' },
  panel_walls: { use: 'panelWalls' },
  panel_width: { use: 'panelWidth' },
  panel_area: { use: 'panelArea' },
  panels_need: { place: 'background' },
  branches_need: { use: 'branchesNeed' },
  pieces: { use: 'pieces' },
  door_lock_need: { use: 'doorLockNeed', place: 'look over' },
  sealant_need: { place: 'background' },
  ground_need: { use: 'groundNeed' },
  mid_need: { use: 'midNeed' },
  feature_need: { use: 'featureNeed' },
  climber_need: { use: 'climberNeed' },
  epiphyte_need: { use: 'epiphyteNeed' },
  plants: { use: 'plants' },
  settle_in: { use: 'settleIn' },
  springtail_target: { use: 'springtailTarget' },
  springtail_capacity: { use: 'springtailRoom' },
  springtail_rate: { use: 'springtailRate' },
  springtail_seed: { use: 'springtailSeed' },
  isopod_founders: { use: 'isopodFounders' },
  cover_vent: { use: 'coverVent' },
  cover_glass: { use: 'coverGlass' },
  panes: { use: 'panes' },
  pane_length: { use: 'paneLength' },
  pane_depth: { use: 'paneDepth' },
  vent_share: { use: 'ventShare' },
  tank_humidity: { use: 'tankHumidity' },
  vapour_winter: { use: 'vapourWinter' },
  vapour_summer: { use: 'vapourSummer' },
  screen_under_lamps: { use: 'screenUnderLamps' },
  lamp_power: { use: 'lampPower' },
  light_hours: { use: 'lightHours' },
  light_target: { use: 'lightTarget' },
  light_per_lamp: { use: 'lightPerLamp' },
  lamps: { use: 'lamps' },
  light_warming_up: { use: 'lightWarmingUp' },
  hottest_day: { use: 'hottestDay' },
  species_ceiling: { use: 'speciesCeiling' },
  species_floor: { use: 'speciesFloor' },
  nozzles: { use: 'nozzles' },
  mist_time: { use: 'mistTime' },
  mist_cut_off: { use: 'mistCutOff' },
  mist_cycles: { use: 'mistCycles' },
  mist: { use: 'mist' },
  drain_access: { use: 'drainAccess' },
  drain_tap_need: { use: 'drainTapNeed', place: 'drainage' },
  drain_hole_need: { place: 'tank' },
  drain_tube_need: { use: 'drainTubeNeed', place: 'drainage' },
  fan_need: { use: 'fanNeed' },
  drain_days: { use: 'drainDays' },
  reservoir: { use: 'reservoir' },
  refill_days: { use: 'refillDays' },
  drainage_mass: { as: ['mass'] },
  capping_mass: { as: ['mass'] },
  soil_mass: { as: ['mass'] },
  litter_wet: { as: ['mass'] },
  water_mass: { as: ['mass'] },
  hardscape_mass: { as: ['mass'] },
  panel_mass: { as: ['mass'] },
  plant_mass: { as: ['mass'] },
  lamps_mass: { as: ['mass'] },
  filled_mass: { use: 'filledMass' },
  shelf_load: { use: 'shelfLoad' },
  crew_empty: { use: 'crewEmpty' },
  crew_filled: { use: 'crewFilled' },
  plant_quarantine: { use: 'plantQuarantine' },
  panel_cure: { use: 'panelCure' },
  stack_fits: { part: 'stack', cures: ['less drainage', 'thinner capping'] },
  soil_enough: { part: 'stack', cures: ['less drainage', 'thinner capping'] },
  slope_holds: { part: 'stack', cures: ['less soil'] },
  upturn_hidden: { part: 'stack', cures: ['smaller upturn'] },
  litter_behind_dam: { part: 'stack', cures: ['less litter'] },
  leaves_close: { part: 'stack', cures: ['more litter'] },
  air_open: { part: 'air', cures: ['wider strip'] },
  cool_enough: { part: 'air', cures: ['screen out', 'fewer lamps'] },
  cool_with_room: { part: 'air', cures: ['screen out', 'fewer lamps'] },
  warm_enough: { part: 'air' },
  water_gets_out: { part: 'water', cures: ['siphon tube', 'drain tap'] },
  mist_keeps_up: { part: 'water', cures: ['more mist'] },
  pump_stuck: { part: 'water', cures: ['mist cut-off'] },
  fan_counted: { part: 'air' },
  drains_slowly: { part: 'water', cures: ['less mist', 'shorter mist'] },
  shelf_holds: {
    part: 'weight',
    cures: ['screen out', 'less soil', 'less drainage', 'fewer branches', 'no background'],
  },
  lift_empty: { part: 'lifting' },
  lift_filled: { part: 'lifting' },
  band_low: { use: 'bandLow' },
  band_high: { use: 'bandHigh' },
  damp_depth: { use: 'dampDepth', as: ['layer'], place: 'soil' },
  damp_placed: { use: 'dampPlaced' },
  hand_mist: { use: 'handMist' },
};

const needsBySection: Readonly<Record<string, LinePlace>> = {
  Tank: 'tank',
  Drainage: 'drainage',
  Capping: 'capping',
  Soil: 'mix',
  'Damp layer': 'soil',
  'Hardscape and panel': 'hardscape',
  Hides: 'hardscape',
  Plants: 'plants',
  Microfauna: 'microfauna',
  Litter: 'litter',
  Leaves: 'litter',
  'Cover and air': 'cover',
  Light: 'lamps',
  'Mist and water': 'misting',
  Work: 'delivery',
};

interface OldLine {
  readonly name: string;
  readonly section: string;
  readonly role: string;
  readonly unit: string;
}

/** What an old line declares, from its name and section; no use if its unit has another kind. */
export function declaredOf(line: OldLine): Declared {
  const known = Object.hasOwn(byName, line.name) ? byName[line.name] : undefined;
  const as = tagsOf(line, known);
  const place = known?.place ?? (line.role === 'need' ? needsBySection[line.section] : undefined);
  return {
    ...useFor(line, known?.use),
    ...(as.length > 0 && { as }),
    ...(place !== undefined && { place }),
    ...(line.role === 'check' && checkedAs(known)),
  };
}

function useFor({ unit }: OldLine, use: UseName | undefined): Declared {
  return use !== undefined && hasKind(unit, use) ? { use } : {};
}

function checkedAs(known: NamedLine | undefined): Declared {
  return { part: known?.part ?? 'other', ...(known?.cures && { cures: known.cures }) };
}

function tagsOf({ name, section, role }: OldLine, known: NamedLine | undefined): LineTag[] {
  return [
    ...(known?.as ?? []),
    ...(role === 'need' && /(?:^|_)leaves(?:_|$)/.test(name) ? (['leaves'] as const) : []),
    ...(role === 'given' && section === 'Place' && name !== 'kit' ? (['survey'] as const) : []),
  ];
}

function hasKind(unit: string, use: UseName): boolean {
  if (unit === 'choice' || unit === 'yes_no') return uses[use].unit === unit;
  const found = findUnit(unit);
  return found !== undefined && sayKind(figureKindOfUnit(found)) === sayKind(kindOfUnit(uses[use].unit));
}
