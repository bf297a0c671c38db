import { addPaperJob, paperDay } from './paper-book.ts';

export const cardTanks = ['T01', 'T02', 'T03', 'T04', 'T05', 'T06', 'T07', 'T08', 'T09', 'T10', 'T11', 'T12'] as const;

/**
 * Every tank of the demo in a job with everything a card can show: every kind of people nearby and of animals, a public
 * place, mist.
 */
export function addFullJob(path: string, recentFile: string, figures: Readonly<Record<string, string>>): void {
  addPaperJob(path, recentFile, {
    title: 'Ferry terminal, waiting hall and nursery room',
    client: 'Brackenlume Ferries and Landing Stages',
    contact: 'Hesper Dunn, stage master',
    access: 'Side door, two turns, no lift, 40 m from the quay',
    site: 'Oak shelf under the north window',
    audience: 'Passengers of all ages, nursery class, clinic patients',
    animals: 'Small poison frogs, later dwarf geckos',
    sizes: cardTanks.map((tank) => ({ tank, count: 1 })),
    writings: Object.entries({ public_site: 'yes', ...figures }).map(([line, text]) => ({ line, text })),
    handover: '2027-07-16',
    on: paperDay,
  });
}
