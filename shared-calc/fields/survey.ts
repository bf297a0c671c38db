import { choice, count, figure, longText, share, words, type Field, type schemaOf } from './field.ts';
import type { z } from 'zod';

/** *Not asked* is an answer of its own: it never counts as no. */
export const surveyAnswers = ['yes', 'no', 'not asked'] as const;

/** Everything that is asked where a tank is to stand. A figure that nobody asked is null, a text empty. */
export const survey = {
  underFives: answer('Children under five'),
  weakImmunity: answer('Over 65 or weak immunity'),
  publicRoom: answer('Public room'),
  feeder: words('Who feeds'),
  namedPerson: words('Named for the tank'),
  clearLengthMm: asked(figure('Clear length', 'mm', { low: 1, high: 20_000 })),
  clearDepthMm: asked(figure('Clear depth', 'mm', { low: 1, high: 20_000 })),
  clearHeightMm: asked(figure('Clear height', 'mm', { low: 1, high: 20_000 })),
  shelfRatingKg: asked(figure('Shelf rating', 'kg', { low: 1, high: 5_000 })),
  narrowestMm: asked(
    figure('Narrowest on the way in', 'mm', { low: 1, high: 20_000, help: 'The narrowest door, stair or lift.' }),
  ),
  steps: asked(count('Steps', { low: 0, high: 500 })),
  lift: answer('Lift'),
  socketNear: answer('Socket within reach'),
  residualCurrentDevice: answer('Residual-current device'),
  waterDistanceM: asked(figure('Water tap, distance', 'm', { low: 0, high: 1_000 })),
  drainDistanceM: asked(figure('Drain, distance', 'm', { low: 0, high: 1_000 })),
  sunHours: asked(figure('Sun on the glass, a day', 'h', { low: 0, high: 24 })),
  sunAreaM2: asked(figure('Glass in the sun', 'm2', { low: 0, high: 20, help: 'At its worst hour.' })),
  heaterNear: answer('Heater or vent near'),
  roomSummerC: asked(figure('Room, hottest day', 'degC', { low: -10, high: 60 })),
  roomWinterC: asked(figure('Room, winter', 'degC', { low: -10, high: 60 })),
  roomLowestC: asked(figure('Room, lowest night', 'degC', { low: -30, high: 60 })),
  humiditySummer: asked(share('Room humidity, summer')),
  humidityWinter: asked(share('Room humidity, winter')),
  noiseDb: asked(figure('Noise allowed, dB', 'number', { low: 0, high: 140 })),
  notes: longText('Notes'),
} satisfies Readonly<Record<string, Field>>;

/** The uses of lines whose figure is an answer of the survey; until it is asked, the house's figure stands there. */
export const surveyUses = [
  'shelfRating',
  'roomSummer',
  'roomWinter',
  'roomLowest',
  'humiditySummer',
  'humidityWinter',
  'sunArea',
  'publicSite',
] as const;

export type SurveyUse = (typeof surveyUses)[number];

export type Survey = z.infer<ReturnType<typeof schemaOf<typeof survey>>>;

/** A survey of which nobody has asked anything. */
export const unasked: Survey = {
  underFives: 'not asked',
  weakImmunity: 'not asked',
  publicRoom: 'not asked',
  feeder: '',
  namedPerson: '',
  clearLengthMm: null,
  clearDepthMm: null,
  clearHeightMm: null,
  shelfRatingKg: null,
  narrowestMm: null,
  steps: null,
  lift: 'not asked',
  socketNear: 'not asked',
  residualCurrentDevice: 'not asked',
  waterDistanceM: null,
  drainDistanceM: null,
  sunHours: null,
  sunAreaM2: null,
  heaterNear: 'not asked',
  roomSummerC: null,
  roomWinterC: null,
  roomLowestC: null,
  humiditySummer: null,
  humidityWinter: null,
  noiseDb: null,
  notes: '',
};

export type SurveyKey = keyof typeof survey;

function answer(heading: string) {
  return choice(heading, surveyAnswers, { fresh: 'not asked' });
}

/** A figure within its bounds, or null while nobody asked. */
function asked(one: Field<z.ZodNumber>): Field<z.ZodNullable<z.ZodNumber>> {
  const { low = -Infinity, high = Infinity } = one;
  return {
    ...one,
    schema: one.schema.min(low).max(high).nullable(),
    mayBeEmpty: true,
    fresh: null,
    empty: 'not asked',
  };
}
