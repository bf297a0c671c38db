/** What nobody asked at the place of a T05 that weighs so much at worst, and who decides. */
export const unasked = (kg: string): readonly (readonly [says: string, decides: string])[] => [
  ['Nobody has asked whether children under five come near it. Ask the client.', HEALTH],
  ['Nobody has asked whether people over 65 or with weak immunity come near it. Ask the client.', HEALTH],
  [
    'Carried upright, never on its side, the tank is 455\u00a0mm at its narrowest outside; nobody has measured the way in. Measure it there.',
    'Crew leader decides',
  ],
  [
    'Nobody has measured all of the clear room: length 610\u00a0mm, clear not asked; depth 455\u00a0mm, clear not asked; height with its cover 609\u00a0mm, clear not asked. Measure it there.',
    'Builder decides',
  ],
  [
    `Filled it weighs ${kg}\u00a0kg at worst, with the drain blocked; nobody has asked what the shelf is rated for. Ask the building owner.`,
    'Building owner or structural engineer decides',
  ],
  [
    'Nobody has asked whether the sun strikes the glass; the hottest day counts none. Ask the caretaker.',
    'Experienced keeper or vet decides',
  ],
  [
    "No kind named: ceiling, floor and band are the house's. Whether it crushes small plants is not known yet.",
    'Experienced keeper decides',
  ],
];
const HEALTH = 'School or centre health lead and public-health office decide';

/** The notes under the quote of a T05. */
export const notes = (kg: string): readonly string[] => [
  '',
  'T05  watch: Loose mix stands over the lip on the day: keep 1.40\u00a0L for a second filling. It may not: settling of the mix at 18\u00a0%. Measure it. Builder decides.',
  "T05  watch: 28.52\u00a0degC on a hot day is above the animals' ceiling of 27\u00a0degC. It may not: warming factor at 1.60. Measure it. Experienced keeper or vet decides.",
  'T05  watch: The drainage fills in 23.3\u00a0d; plan to drain or mist less. It may not: air factor at 0.50. Measure it. Builder decides.',
  'T05  watch: A pane of this length wants 5\u00a0mm or a rail under it. Glass cutter decides.',
  'T05  advice: Do not lift when filled; build in place. Crew leader decides.',
  ...unasked(kg).map(([says, decides]) => `T05  not known yet: ${says} ${decides}.`),
];
