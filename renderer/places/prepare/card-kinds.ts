/** The printed cards, in order of use. */
export const cardKinds = [
  { id: 'survey', title: 'Survey card', says: 'What to measure and to ask on site.', ofJob: true },
  { id: 'prep', title: 'Prep plan', says: 'Orders, treatments and starts day by day.', ofJob: true },
  { id: 'treatment', title: 'Leaf treatment', says: 'One way, batch by batch, to stand by.', ofJob: false },
  { id: 'labels', title: 'Batch labels', says: 'For the bags of treated leaves.', ofJob: false },
  { id: 'build', title: 'Build card', says: 'Step by step, what goes in and how deep.', ofJob: true },
  { id: 'watch', title: 'Commissioning watch', says: 'Readings of 24 to 72 h, to be signed.', ofJob: true },
  { id: 'animals-in', title: 'Animals-in plan', says: 'When they go in, and the days to look.', ofJob: true },
  { id: 'handover', title: 'Handover card', says: 'Stays with the tank.', ofJob: true },
  { id: 'care', title: 'Care calendar', says: 'Visits, draining, refilling, lamps.', ofJob: true },
  {
    id: 'areas',
    title: 'Care calendar by area',
    says: 'Visits to all tanks, one round a week and area.',
    ofJob: false,
  },
] as const;

export type CardId = (typeof cardKinds)[number]['id'];

export function isCard(id: string | undefined): id is CardId {
  return cardKinds.some((card) => card.id === id);
}
