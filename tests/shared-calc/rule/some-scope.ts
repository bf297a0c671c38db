import type { RuleScope } from '#shared-calc/rule/check-rule.ts';
import { kindOfUnit, YES_NO, type Kind } from '#shared-calc/quantity/kind.ts';
import { sameDimension, timesDimension, PLAIN } from '#shared-calc/quantity/dimension.ts';
import type { Argument, Signature } from '#shared-calc/rule/signature.ts';

const shapes = ['rectangle', 'bow', 'corner', 'hexagon', 'cylinder'] as const;

function signature(
  name: string,
  gives: Signature['gives'],
  ...takes: readonly (Argument['takes'] | Argument)[]
): Signature {
  const args = takes.map((each, at) =>
    typeof each === 'object' && 'name' in each ? each : { name: `figure${at + 1}`, takes: each },
  );
  return { name, gives, args };
}

const named = (name: string, takes: Argument['takes']): Argument => ({ name, takes });
const shape = named('shape', shapes);

/** plant_count: the two must multiply to a count. */
const countOfBoth: Signature['gives'] = ([left, right]: readonly Kind[]) =>
  left?.is === 'figure' &&
  right?.is === 'figure' &&
  sameDimension(timesDimension(left.dimension, right.dimension), PLAIN)
    ? kindOfUnit('each')
    : undefined;

/** Some trade functions that the first house recipe calls, given by their signatures alone. */
export const someFunctions: ReadonlyMap<string, Signature> = new Map(
  [
    signature('layer_volume', 'L', named('area', 'm2'), named('depth', 'mm')),
    signature('loose_needed', 'L', named('placed', 'L'), named('settle', 'share'), named('waste', 'share')),
    signature(
      'mix_part',
      'L',
      named('loose', 'L'),
      named('part', 'number'),
      named('parts', 'number'),
      named('shrink', 'share'),
    ),
    signature('dam_room', 'mm', 'mm', 'mm', 'mm', 'mm', 'mm'),
    signature('tank_floor_area', 'm2', shape, 'mm', 'mm', 'mm', 'mm'),
    signature('sloped_volume', 'L', shape, 'mm', 'mm', 'mm', 'mm', 'mm', 'mm'),
    signature('front_strip_area', 'm2', shape, 'mm', 'mm', 'mm', 'mm', 'mm'),
    signature('bead_volume', 'L', named('perimeter', 'm'), named('width', 'mm'), named('height', 'mm'), {
      name: 'profile',
      takes: ['triangle', 'fillet'],
      otherwise: 'triangle',
    }),
    signature('litter_mass', 'g', 'm2', 'mm', 'g/L'),
    signature('plant_count', countOfBoth, named('density', 'any'), named('measure', 'any'), named('least', 'number')),
    signature('seed_count', 'each/m2', 'each/m2', 'each/m2', '%/d', 'd'),
    signature('vapour_loss', 'mL/d', 'm3', 'each/h', named('inside', 'degC'), 'share', 'degC', 'share'),
    signature('daily_light', 'mol/m2/d', 'umol/s', 'share', 'share', 'm2', 'h/d'),
    signature('light_warming', 'K', named('power', 'W'), 'share', 'm2', 'W/m2/K'),
    signature('lamps_needed', 'each', 'mol/m2/d', 'mol/m2/d'),
    signature('lift_crew', 'each', 'kg', 'kg'),
    signature('mist_daily', 'mL/d', 'each', 'mL/min', 'kPa', 'kPa', 's', 'each/d'),
    signature('panel_sealant_run', 'm', 'mm', 'mm', 'mm'),
  ].map((each) => [each.name, each]),
);

const units: Readonly<Record<string, string>> = {
  dam_height: 'mm',
  drainage: 'mm',
  capping: 'mm',
  mesh_thickness: 'mm',
  freeboard: 'mm',
  soil_front: 'mm',
  soil_rise: 'mm',
  inside_length: 'mm',
  inside_depth: 'mm',
  inside_height: 'mm',
  front_bow: 'mm',
  side_return: 'mm',
  glass: 'mm',
  overall_length: 'mm',
  outside_length: 'mm',
  lamp_length: 'mm',
  cover_vent: 'mm',
  front_vent: 'mm',
  mesh_upturn: 'mm',
  bead_width: 'mm',
  panel_width: 'mm',
  litter: 'mm',
  perimeter: 'm',
  floor_area: 'm2',
  wall_area: 'm2',
  panel_area: 'm2',
  panel_size: 'm2',
  glass_area: 'm2',
  soil_gross: 'L',
  edge_bead: 'L',
  soil_buried: 'L',
  soil_placed: 'L',
  drainage_placed: 'L',
  mix_loose: 'L',
  drain_room: 'L',
  reservoir: 'L',
  buried_share: '%',
  panel_waste: '%',
  blend_shrink: '%',
  mix_settle: '%',
  moisture_target: '%',
  vent_share: '%',
  humidity_summer: '%',
  tank_humidity: '%',
  light_use: '%',
  coir_parts: 'number',
  bark_parts: 'number',
  mix_parts: 'number',
  litter_dry: 'g',
  leaf_sheet: 'g/m2',
  litter_density: 'g/L',
  mix_dry: 'kg/L',
  hardscape_rate: 'each/m2',
  branches_need: 'each',
  tubes_need: 'each',
  pods_need: 'each',
  nozzles: 'each',
  lamps: 'each',
  crew_empty: 'each',
  plants: 'each',
  springtail_target: 'each/m2',
  springtail_capacity: 'each/m2',
  springtail_rate: '%/d',
  settle_in: 'd',
  drain_days: 'd',
  room_summer: 'degC',
  hottest_day: 'degC',
  species_ceiling: 'degC',
  tank_air: 'degC',
  light_warming_up: 'K',
  lamp_power: 'W',
  lamp_efficacy: 'umol/J',
  light_hours: 'h/d',
  heat_passage: 'W/m2/K',
  air_volume: 'm3',
  air_changes: 'each/h',
  mist: 'mL/d',
  vapour_winter: 'mL/d',
  vapour_summer: 'mL/d',
  shelf_rating: 'kg',
  shelf_share: '%',
  filled_mass: 'kg',
  tank_mass: 'kg',
  top_mass: 'kg',
  lift_limit: 'kg',
  delivery_distance: 'km',
  trips: 'each',
};

const kinds: ReadonlyMap<string, Kind> = new Map<string, Kind>([
  ...Object.entries(units).map(([name, unit]) => [name, kindOfUnit(unit)] as const),
  ['kit', { is: 'choice', options: ['basic', 'full', 'show'] }],
  ['tank_shape', { is: 'choice', options: shapes }],
  ['drain_access', { is: 'choice', options: ['none', 'tube', 'tap'] }],
  ['client_tank', YES_NO],
  ['panel_buried', YES_NO],
  ['mist_cut_off', YES_NO],
]);

/** Lines of the first house recipe with their kinds; `not_worked_yet` has none. */
export const someScope: RuleScope = {
  kindOfLine: (name) => kinds.get(name),
  lineNames: [...kinds.keys(), 'not_worked_yet'],
  functions: someFunctions,
};
