import type { CautionOf } from './card-cautions.ts';

/** A sentence of a build step; `when` names the line without which it is not said. */
export type StepSentence = string | { readonly says: string; readonly when: string };

/** One step of a build as every recipe has it: what of the needs and the work belongs to it, and what is said. */
export interface BuildStepPlan {
  readonly title: string;
  /** Need lines by name, or all of a section or a quote group that no step names. */
  readonly lines?: readonly string[];
  readonly sections?: readonly string[];
  readonly groups?: readonly string[];
  /** Work lines by their task. */
  readonly tasks: readonly string[];
  readonly says: readonly StepSentence[];
  readonly cautions: readonly CautionOf[];
}

/** The steps in the order in which a tank is built; one with nothing to take and no minutes is left out. */
export const buildSteps: readonly BuildStepPlan[] = [
  {
    title: 'Tank',
    lines: ['tank_need', 'drain_hole_need'],
    sections: ['Tank'],
    tasks: ['L01'],
    says: [
      'Inside {inside_length} long, {inside_height} high, dam {dam_height}. Look at glass and seams, clean it.',
      { says: 'Test it for leaks with water up to the dam for a day.', when: 'drain_room' },
      { says: 'The client brings the tank: measure it before anything else.', when: 'client_tank' },
    ],
    cautions: ['tank', 'lifting', { step: 'drain tap', when: 'drain_tap_need' }],
  },
  {
    title: 'Background',
    lines: ['panels_need', 'sealant_need'],
    tasks: ['L02'],
    says: [
      'Glue {panel_area} of background, {panel_width} wide. Ventilate and wear gloves.',
      'Leave it to cure for {panel_cure}, then rinse.',
    ],
    cautions: ['foam and sealant'],
  },
  {
    title: 'Drainage',
    lines: ['drainage_need', 'drain_tap_need', 'drain_tube_need'],
    sections: ['Drainage'],
    tasks: ['L03'],
    says: [
      'Rinse it and lay it {drainage} deep, level.',
      'Water may stand to {drain_gap} below the mesh: {drain_room} and no more.',
      { says: 'Stand the siphon tube on the base, cap on.', when: 'drain_tube_need' },
      { says: 'Fit the tap before the layer goes in, and try it with water.', when: 'drain_tap_need' },
    ],
    cautions: ['clay, charcoal, bark dust', 'drainage'],
  },
  {
    title: 'Mesh',
    lines: ['mesh_need'],
    tasks: ['L04'],
    says: ['Cut {mesh_length} × {mesh_depth}, turned up {mesh_upturn} all round.'],
    cautions: [],
  },
  {
    title: 'Capping',
    lines: ['capping_need'],
    sections: ['Capping'],
    tasks: ['L05'],
    says: [
      'Wet it first, lay it {capping} thick.',
      'A clay edge along the glass, {bead_width} wide and {bead_height} high.',
    ],
    cautions: ['clay, charcoal, bark dust'],
  },
  {
    title: 'Blend the mix',
    sections: ['Soil'],
    tasks: ['L06'],
    says: ['Makes {mix_loose} loose. Wet the dust down before you begin; rest the mix a day.'],
    cautions: ['mix', 'clay, charcoal, bark dust', 'moss, bark, leaf mould', { step: 'coir', when: 'coir_need' }],
  },
  {
    title: 'Place the mix',
    tasks: ['L07'],
    sections: ['Damp layer'],
    says: [
      { says: 'Wet it with {wetting} of water: a squeeze gives a drop or two.', when: 'wetting' },
      'Lay it {soil_front} deep at the front, rising {soil_rise} to the back: {soil_placed} as placed.',
      'Lay the damp layer {damp_depth} deep: {damp_placed} as placed.',
    ],
    cautions: ['moss, bark, leaf mould', 'water'],
  },
  {
    title: 'Inoculate and mist',
    lines: ['inoculant_need'],
    tasks: ['L09'],
    says: ['Work it into the top of the mix, never with chlorinated water. Mist heavily.'],
    cautions: [],
  },
  {
    title: 'Hardscape',
    sections: ['Hardscape and panel', 'Hides'],
    tasks: ['L08'],
    says: ['Heavy pieces stand firm on the layers below; nothing leans on doors or glass.'],
    cautions: ['leaves and wood'],
  },
  {
    title: 'Plants',
    groups: ['plants'],
    sections: ['Plants'],
    tasks: ['L11'],
    says: [
      { says: 'Out of quarantine ({plant_quarantine}), bare-root and rinsed. Then mist heavily.', when: 'plants' },
    ],
    cautions: ['plants', 'hands'],
  },
  {
    title: 'Microfauna',
    groups: ['microfauna'],
    sections: ['Microfauna'],
    tasks: ['L10'],
    says: ['About {springtail_seed} springtails, from a dense cup.', '{isopod_founders} isopods to start with.'],
    cautions: ['microfauna'],
  },
  {
    title: 'Leaves',
    sections: ['Litter', 'Leaves'],
    tasks: ['L12'],
    says: ['Treated leaves {litter} deep over all of the soil, then mist.'],
    cautions: ['leaves and wood', 'sterile or clean'],
  },
  {
    title: 'Cover glass',
    groups: ['cover'],
    sections: ['Cover and air'],
    tasks: ['L13'],
    says: [
      'Panes: {panes}, each {pane_length} × {pane_depth}, {cover_glass} thick, labelled.',
      'The vent strip stays open, {cover_vent}. Screen every opening and cable hole.',
    ],
    cautions: [
      'cover glass',
      { step: 'cover glass, screen removed', unless: 'screen_under_lamps' },
      'vents, doors, cables',
    ],
  },
  {
    title: 'Lamps and timer',
    groups: ['lamps'],
    sections: ['Light'],
    tasks: ['L14'],
    says: ['Lamps: {lamps}, {lamp_power} each, {light_hours}.', 'Drip loops on every cable, timer off the floor.'],
    cautions: ['lamp', 'electrics'],
  },
  {
    title: 'Misting',
    groups: ['mist'],
    sections: ['Mist and water'],
    tasks: ['L15'],
    says: [
      { says: 'Nozzles: {nozzles}, at the walls and not at the animals; {mist_time}, {mist_cycles}.', when: 'nozzles' },
      { says: 'Fill the can with {reservoir}, below the nozzles.', when: 'nozzles' },
    ],
    cautions: [
      { step: 'mist pump', when: 'nozzles' },
      { step: 'reservoir', when: 'nozzles' },
      { step: 'electrics', when: 'nozzles' },
      'water',
    ],
  },
  {
    title: 'Clean and look over',
    lines: ['door_lock_need'],
    tasks: ['L16'],
    says: [
      'Clean the glass, photograph it, list what is missing.',
      { says: 'Fit the door lock.', when: 'door_lock_need' },
    ],
    cautions: [{ step: 'public place', when: 'public_site' }],
  },
  {
    title: 'Load, drive, carry',
    groups: ['delivery'],
    tasks: ['J3', 'J4'],
    says: [
      'Empty, dry-packed, leaves bagged, plants braced. Animals travel by themselves.',
      'The shelf is rated {shelf_rating}; filled the tank weighs {filled_mass}.',
    ],
    cautions: ['lifting', 'survey', 'transport'],
  },
  {
    title: 'Hand over',
    tasks: ['L17'],
    says: ['Go through the handover card together, line by line.'],
    cautions: [],
  },
];
