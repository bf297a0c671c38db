import type { LinePlace, UseName } from '#shared-calc/fields/uses.ts';
import type { BuildAct } from '#shared-calc/cautions/acts.ts';

/** A sentence of a build step with figures by use in braces; `when` is a use without which it is left out. */
export type StepSentence = string | { readonly says: string; readonly when: UseName };

/** One build step, the same for every recipe: which needs and work belong to it, and its sentences. */
export interface BuildStepPlan {
  readonly title: string;
  /** Needs with this place belong to the step; needs without a place go by quote group. */
  readonly place?: LinePlace;
  readonly groups?: readonly string[];
  /** Tasks whose work lines belong to the step. */
  readonly tasks: readonly string[];
  readonly says: readonly StepSentence[];
  /** Its hazards and cautions. */
  readonly act: BuildAct;
}

/** The steps in build order; a step without goods and minutes is left out. */
export const buildSteps: readonly BuildStepPlan[] = [
  {
    title: 'Tank',
    place: 'tank',
    tasks: ['L01'],
    says: [
      'Size: {size}; dam {damHeight}. Look at glass and seams, clean it.',
      { says: 'Test it for leaks with water up to the dam for a day, then siphon it out.', when: 'drainRoom' },
      { says: 'The client brings the tank: measure it before anything else.', when: 'clientTank' },
    ],
    act: 'tank',
  },
  {
    title: 'Background',
    place: 'background',
    tasks: ['L02'],
    says: [
      'Glue {panelArea} of background, {panelWidth} wide. Ventilate and wear gloves.',
      'Leave it to cure for {panelCure}, then rinse.',
    ],
    act: 'background',
  },
  {
    title: 'Drainage',
    place: 'drainage',
    tasks: ['L03'],
    says: [
      'Rinse it and lay it {drainage} deep, level.',
      'Water may stand to {drainGap} below the mesh: {drainRoom} and no more.',
      { says: 'Stand the siphon tube on the base, cap on.', when: 'drainTubeNeed' },
      { says: 'Fit the tap before the layer goes in, and try it with water.', when: 'drainTapNeed' },
    ],
    act: 'drainage',
  },
  {
    title: 'Mesh',
    place: 'mesh',
    tasks: ['L04'],
    says: ['Cut {meshLength} × {meshDepth}, turned up {meshUpturn} all round.'],
    act: 'mesh',
  },
  {
    title: 'Capping',
    place: 'capping',
    tasks: ['L05'],
    says: [
      'Wet it first, lay it {capping} thick.',
      'A clay edge along the glass, {beadWidth} wide and {beadHeight} high.',
    ],
    act: 'capping',
  },
  {
    title: 'Blend the mix',
    place: 'mix',
    tasks: ['L06'],
    says: ['Makes {mixLoose} loose. Wet the dust down before you begin; rest the mix a day.'],
    act: 'mix',
  },
  {
    title: 'Place the mix',
    place: 'soil',
    tasks: ['L07'],
    says: [
      { says: 'Wet it with {wetting} of water: a squeeze gives a drop or two.', when: 'wetting' },
      'Lay it {soilFront} deep at the front, rising {soilRise} to the back: {soilPlaced} as placed.',
      {
        says: 'Fill to the lip; keep {soilLater} in a labelled tub; fill up at the first visit.',
        when: 'soilLater',
      },
      'Lay the damp layer {dampDepth} deep: {dampPlaced} as placed.',
    ],
    act: 'soil',
  },
  {
    title: 'Inoculate and mist',
    place: 'inoculate',
    tasks: ['L09'],
    says: ['Work it into the top of the mix, never with chlorinated water. Mist heavily.'],
    act: 'inoculate',
  },
  {
    title: 'Hardscape',
    place: 'hardscape',
    tasks: ['L08'],
    says: ['Heavy pieces stand firm on the layers below; nothing leans on doors or glass.'],
    act: 'hardscape',
  },
  {
    title: 'Plants',
    place: 'plants',
    groups: ['plants'],
    tasks: ['L11'],
    says: [{ says: 'Out of quarantine ({plantQuarantine}), bare-root and rinsed. Then mist heavily.', when: 'plants' }],
    act: 'plants',
  },
  {
    title: 'Microfauna',
    place: 'microfauna',
    groups: ['microfauna'],
    tasks: ['L10'],
    says: ['About {springtailSeed} springtails, from a dense cup.', '{isopodFounders} isopods to start with.'],
    act: 'microfauna',
  },
  {
    title: 'Leaves',
    place: 'litter',
    tasks: ['L12'],
    says: ['Treated leaves {litter} deep over all of the soil, then mist.'],
    act: 'litter',
  },
  {
    title: 'Cover glass',
    place: 'cover',
    groups: ['cover'],
    tasks: ['L13'],
    says: [
      'Panes: {panes}, each {paneLength} × {paneDepth}, {coverGlass} thick, labelled.',
      'The vent strip stays open, {coverVent}. Screen every opening and cable hole.',
    ],
    act: 'cover',
  },
  {
    title: 'Lamps and timer',
    place: 'lamps',
    groups: ['lamps'],
    tasks: ['L14'],
    says: ['Lamps: {lamps}, {lampPower} each, {lightHours}.', 'Drip loops on every cable, timer off the floor.'],
    act: 'lamps',
  },
  {
    title: 'Misting',
    place: 'misting',
    groups: ['mist'],
    tasks: ['L15'],
    says: [
      { says: 'Nozzles: {nozzles}, at the walls and not at the animals; {mistTime}, {mistCycles}.', when: 'nozzles' },
      { says: 'Fill the can with {reservoir}, below the nozzles.', when: 'nozzles' },
    ],
    act: 'misting',
  },
  {
    title: 'Clean and look over',
    place: 'look over',
    tasks: ['L16'],
    says: [
      'Clean the glass, photograph it, list what is missing.',
      { says: 'Fit the door lock.', when: 'doorLockNeed' },
    ],
    act: 'look over',
  },
  {
    title: 'Load, drive, carry',
    place: 'delivery',
    groups: ['delivery'],
    tasks: ['J3', 'J4'],
    says: [
      'Empty, dry-packed, leaves bagged, plants braced. Animals travel by themselves.',
      'The shelf is rated {shelfRating}; filled the tank weighs {filledMass}.',
    ],
    act: 'delivery',
  },
  {
    title: 'Hand over',
    tasks: ['L17'],
    says: ['Go through the handover card together, line by line.'],
    act: 'handOver',
  },
];
