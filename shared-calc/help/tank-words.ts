import type { Word } from './word.ts';

/** The tank and what lies in it, from the floor up. */
export const tankWords = {
  layers: {
    word: 'layers',
    says: 'What lies on the floor of a tank, from below: {drainage}, a mesh, {capping}, {soil}, {litter}. The {dam} sets how much room they have at the front.',
    picture: 'layers',
  },
  dam: {
    word: 'dam',
    says: 'The strip of glass at the foot of the front, under the doors. It holds the layers back, so they must stay under its edge at the front, by the {freeboard}. Its height is measured inside, from the floor to the edge.',
    picture: 'dam',
  },
  drainage: {
    word: 'drainage',
    says: 'The lowest layer, of expanded clay. Water that runs through the soil stands in its gaps, up to the {drain-gap}, until it is drained or dries away.',
    picture: 'drainage',
  },
  'drain-gap': {
    word: 'drain gap',
    says: 'How far the standing water must stay under the mesh. When the {drainage} is full up to there, it is time to drain.',
    picture: 'drainage',
  },
  capping: {
    word: 'capping',
    says: 'A thin layer of calcined clay on the mesh. It holds the fine soil back from the {drainage} and lets water through. Along the glass it is laid as an {bead}.',
    picture: 'capping',
  },
  bead: {
    word: 'edge bead',
    says: 'The bead of capping clay along the glass, where the mesh ends. It closes the edge, and the soil needs that much less.',
  },
  soil: {
    word: 'soil',
    says: 'The mix that plants root in. It is laid thicker than it will be, because it settles when it is wetted, and higher at the back than at the front.',
    picture: 'soil',
  },
  freeboard: {
    word: 'freeboard',
    says: 'The height left between the soil and the edge of the {dam} at the front.',
    picture: 'dam',
  },
  litter: {
    word: 'litter',
    says: 'Leaves on the soil. They keep it moist and feed the {springtails|small animals} that keep the tank clean. Its depth is measured loose, as laid.',
    picture: 'litter',
  },
  springtails: {
    word: 'springtails',
    says: 'Small soil animals that eat mould and dead leaves. They are put in before the frogs or geckos, from a {tub}. The word stands for isopods too where both are meant.',
  },
  cover: {
    word: 'cover glass',
    says: 'Panes on the top opening that hold the moist air in. The strip left open for air is the {vent}.',
  },
  vent: {
    word: 'vent strip',
    says: 'The part of the top that the {cover|cover glass} leaves open. A wider one dries the tank.',
  },
  return: {
    word: 'return',
    says: 'In a corner tank, the short side between the long glass at the wall and the slanted front.',
    picture: 'corner',
  },
  'outside-size': {
    word: 'outside size',
    says: 'Catalogues give a tank as it stands in the room. The recipe needs it from glass to glass inside: the tank book works that from the outside size and the glass.',
  },
  kit: {
    word: 'kit level',
    says: 'How richly a tank is fitted: basic, full or show. It sets the number of plants and what equipment is in the price.',
  },
} as const satisfies Readonly<Record<string, Word>>;
