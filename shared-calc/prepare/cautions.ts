import type { UseName } from '#shared-calc/fields/uses.ts';
import { HOTTEST_OVEN_C } from '#shared-calc/trade/heat-targets.ts';
import { heatCaution, heatOfAnySize } from './heat-words.ts';
import { HEALTH_LEAD } from '#shared-calc/jobs/place-checks.ts';

/** A caution at a step of the work, and who decides about it. The program reminds; it does not rule. */
export interface StepCaution {
  readonly step: string;
  readonly caution: string;
  readonly decides: string;
}

/** Cautions by step, for the cards. */
export const stepCautions: readonly StepCaution[] = [
  {
    step: 'enquiry',
    caution:
      'Reptiles and amphibians should not be kept with under-fives, people over 65 or with weak immunity, nor in childcare rooms: carriers look healthy. Wash hands after any contact with the tank or its water (CDC).',
    decides: HEALTH_LEAD,
  },
  {
    step: 'animal choice',
    caution:
      'Protected-species trade rules: most poison-frog kinds are listed and need permits and breeding proof, some dwarf geckos are on the strictest list (CITES). Local invasive and disease rules too.',
    decides: 'Wildlife authority',
  },
  {
    step: 'survey',
    caution: 'Floor and shelf loads, wall fixing, stairs.',
    decides: 'Building owner; structural engineer above the shelf plate',
  },
  {
    step: 'lifting',
    caution: 'A filled tank of 80 kg cannot be lifted by a team; glass edges cut.',
    decides: 'The crew leader on the day',
  },
  {
    step: 'electrics',
    caution:
      'Residual-current protection of 30 mA or less, drip loops, no sockets under mist, the transformer off the floor. Unplug before hands go in.',
    decides: 'Qualified electrician',
  },
  {
    step: 'tank',
    caution: 'Test with water for 24 h where there is a water feature, look at the seams, never lift by the top frame.',
    decides: 'Tank maker',
  },
  {
    step: 'foam and sealant',
    caution:
      'Uncured foam can make the lungs sensitive for life: ventilate, gloves, no sanding without a mask. Vapour and acid smell must be gone before animals.',
    decides: 'Product safety sheet; occupational doctor if wheezing',
  },
  {
    step: 'clay, charcoal, bark dust',
    caution: 'Crystalline silica and mould dust: wet it first, never sweep dry, mask (29 CFR 1910.1053).',
    decides: 'Safety sheet',
  },
  {
    step: 'moss, bark, leaf mould',
    caution: 'Gloves, cover cuts, wet down: composts carry fungus and Legionella.',
    decides: 'Safety sheet',
  },
  {
    step: 'coir',
    caution: 'Washed low-salt grade; rinse until the run-off is under 0.5 mS/cm.',
    decides: 'Builder',
  },
  {
    step: 'drainage',
    caution: 'Standing water below the mesh gap always; a sour smell means drain now.',
    decides: 'Builder',
  },
  {
    step: 'drain tap',
    caution: 'Have the hole drilled by the cutter: toughened glass shatters when drilled.',
    decides: 'Glass cutter',
  },
  {
    step: 'mix',
    caution:
      'No fertiliser, perfumed or wetting-agent compost, no lime sand for frogs; worm casts at most 5 % of the mix.',
    decides: 'Builder; vet if skin signs',
  },
  {
    step: 'leaves and wood',
    caution: `Collect only where the owner of the land allows it and nothing is sprayed, away from roads; no oleander, yew, laurel cherry, walnut or conifer. Bake attended at ${HOTTEST_OVEN_C} degC or less.`,
    decides: 'Grower; owner of the land',
  },
  {
    step: 'steam',
    caution:
      "Leaves in a cloth bag that lets steam through, on a rack, two thirds full at most. Vent 10 min, water to the vessel's plate and checked every batch, valve checked yearly; never force it open, open only at zero gauge.",
    decides: "Vessel maker's plate",
  },
  {
    step: 'sterile or clean',
    caution:
      "Clean is enough: a living tank is not sterile, and a bake does not sterilise. Never promise 'sterile' on a quote.",
    decides: 'Grower',
  },
  {
    step: 'plants',
    caution:
      'Insecticide dips are in use at growers and hit isopods and springtails: bare-root, rinse, 28 to 30 days. No systemic products; name oxalate and latex plants in classrooms.',
    decides: 'Plant house; toxicology line',
  },
  {
    step: 'water',
    caution:
      'Chlorine and chloramine kill amphibians at tiny doses, and chloramine neither stands nor boils off: rated conditioner or reverse osmosis. No first draw from metal pipes, no rain off metal roofs; water that frogs stand in is given its minerals back.',
    decides: "Water supplier's report, vet",
  },
  {
    step: 'reservoir',
    caution: 'Clean the can every 14 days: warm water in fine mist can grow Legionella at 20 to 45 degC.',
    decides: 'Building water-safety person in public lobbies',
  },
  {
    step: 'mist pump',
    caution:
      'Can below the nozzles or a valve against siphoning, a limit on run time, a timer in seconds, never a plug timer in quarter hours.',
    decides: 'Builder',
  },
  {
    step: 'vents, doors, cables',
    caution: 'Screen every opening, 1 mm or finer; no gap over 2 mm: frogs, hatchlings and feeder flies leave.',
    decides: 'Builder',
  },
  {
    step: 'cover glass',
    caution: "Never zero ventilation; ground edges, labelled panes, out of a child's reach.",
    decides: 'Builder',
  },
  {
    step: 'cover glass, screen removed',
    caution:
      'A pane that stops short of the front needs a rail under its front edge and under every joint before the screen comes out, or it drops in.',
    decides: 'Glass cutter, builder',
  },
  {
    step: 'lamp',
    caution: 'No heat lamps for forest frogs; a guard; UV only by species advice.',
    decides: 'Vet or keeper',
  },
  {
    step: 'microfauna',
    caution: 'Never release outdoors; keep pure cultures; quarantine what carries grain mites or predatory mites.',
    decides: 'Grower',
  },
  {
    step: 'heat',
    caution: heatCaution(heatOfAnySize),
    decides: "Client's named person, vet",
  },
  {
    step: 'cold',
    caution: "The room's weekend and holiday minimum, not its heated figure, against the animals' least.",
    decides: 'Keeper, vet',
  },
  {
    step: 'animals in',
    caution:
      'Not before max and min are recorded within the band for 24 to 72 h; feed present; one species a tank unless a specialist says otherwise; look daily for 28 days.',
    decides: 'Experienced keeper; exotic-animal vet',
  },
  {
    step: 'quarantine',
    caution:
      '30 days at least, 60 better, three clear droppings tests; the clock restarts when an animal joins; swab for chytrid.',
    decides: 'Vet',
  },
  {
    step: 'feeding',
    caution:
      'A named feeder, a fly supply, cover for school holidays, calcium and D3 dusting; glass passes no useful UVB.',
    decides: 'Keeper, vet',
  },
  {
    step: 'hands',
    caution:
      'Before: rinse off all soap, no sanitiser, wet powder-free gloves for frogs. After: wash with soap (CDC). Never clean or drain in a kitchen or where food is made.',
    decides: 'Keeper',
  },
  {
    step: 'sprays near the tank',
    caution: 'No glass cleaner, air freshener, pest treatment, paint or floor polish near the vents.',
    decides: "Client's named person",
  },
  { step: 'public place', caution: 'A keyed door lock.', decides: 'Client' },
  {
    step: 'transport',
    caution: 'Animals apart from the tank, 18 to 24 degC, dark, short.',
    decides: 'Carrier and animal-transport rules',
  },
  {
    step: 'service',
    caution: 'Wash hands; tools of their own for each tank, or disinfect and rinse between tanks.',
    decides: 'Fitter',
  },
  {
    step: 'disease waste',
    caution:
      'Chytrid dies within minutes at 60 degC, within hours at 37, and of many disinfectants. Drain water and old soil to the sewer or bagged waste, never to a stream or garden.',
    decides: 'Vet, waste rules',
  },
  {
    step: 'death',
    caution: 'Stop, photograph, cool the body and do not freeze it, call the vet, hold all moves.',
    decides: 'Vet',
  },
];

/** When a figure misleads, and the note for it. */
export interface FigureCaution {
  /** The uses of the lines that the note belongs to. */
  readonly uses: readonly UseName[];
  readonly misleads: string;
  readonly says: string;
}

export const figureCautions: readonly FigureCaution[] = [
  {
    uses: ['lightWarmingUp', 'hottestDay'],
    misleads: 'how much lamp heat stays is a guess; sun comes in',
    says: 'The range covers lamp heat and glass. Sun counts only where its area is given; a heater or hot air under the lamp does not. The watch reading decides.',
  },
  {
    uses: ['vapourWinter', 'vapourSummer', 'drainDays'],
    misleads: 'air changes are a guess',
    says: 'Turns on air changes nobody measured; look at the water after two weeks.',
  },
  {
    uses: ['shelfLoad'],
    misleads: 'feet, stand, spreading',
    says: 'Not a floor verdict: feet concentrate it, the floor spreads it.',
  },
  { uses: ['lightPerLamp', 'lamps'], misleads: 'tall tanks', says: 'Measure at the soil.' },
  {
    uses: ['springtailSeed'],
    misleads: "growth slower than the recipe's rate: 5 % a day asks for half as many again",
    says: 'Use a dense cup.',
  },
  {
    uses: ['panelDisplaced', 'soilPlaced'],
    misleads: 'a background goes down to the base',
    says: 'Say that the background is buried, or the soil behind it is counted.',
  },
  {
    uses: ['leavesLoose'],
    misleads: 'air is trapped in the steam vessel',
    says: 'Only with vented steam and a core probe.',
  },
];
