/** Persons and offices that may decide about a caution; never a thing, such as a plate or a sheet. */
export const deciders = [
  'Builder',
  'Building owner',
  'Building water-safety person',
  'Carrier',
  'Client',
  "Client's named person",
  'Crew leader',
  'Driver',
  'Exotic-animal vet',
  'Experienced keeper',
  'Fitter',
  'Glass cutter',
  'Grower',
  'Keeper',
  'Maker of the product',
  'Occupational doctor',
  'Owner of the land',
  'Permits office',
  'Plant house',
  'Poison information centre',
  'Public-health office',
  'Qualified electrician',
  'School or centre health lead',
  'Structural engineer',
  'Tank maker',
  'Vet',
  'Veterinary office',
  'Waste office',
  'Water supplier',
  'Whoever services the vessel',
  'Wildlife authority',
  'Workshop safety lead',
] as const;

type Decider = (typeof deciders)[number];
type Second = Uncapitalize<Decider>;

/** One decider, two, or a second one in some case only: `Builder; vet if skin signs`. */
export type Decides = Decider | `${Decider}, ${Second}` | `${Decider}; ${Second} if ${string}`;
