import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { survey as fields, type Survey, type SurveyKey, type SurveyUse } from '#shared-calc/fields/survey.ts';
import type { GivenText } from '#shared-calc/recipe/column.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Job, Line } from '#shared-calc/records/records.ts';
import { typedText } from '#shared-calc/records/typed-figure.ts';
import { isSurveyKey } from './survey-questions.ts';

/** What an answer gives: its figure as a text, `undefined` while nobody has asked. */
interface Giving {
  /** Of the line that takes it. */
  readonly use: SurveyUse;
  readonly text: (survey: Survey) => string | undefined;
}

const sun: Giving = { use: 'sunArea', text: sunArea };

/** The answers that give a line its figure. */
export const givenBy: { readonly [K in SurveyKey]?: Giving } = {
  shelfRatingKg: { use: 'shelfRating', text: (survey) => figure(survey.shelfRatingKg, 'kg') },
  roomSummerC: { use: 'roomSummer', text: (survey) => figure(survey.roomSummerC, 'degC') },
  roomWinterC: { use: 'roomWinter', text: (survey) => figure(survey.roomWinterC, 'degC') },
  roomLowestC: { use: 'roomLowest', text: (survey) => figure(survey.roomLowestC, 'degC') },
  humiditySummer: { use: 'humiditySummer', text: (survey) => percent(survey.humiditySummer) },
  humidityWinter: { use: 'humidityWinter', text: (survey) => percent(survey.humidityWinter) },
  sunAreaM2: sun,
  sunHours: sun,
  publicRoom: {
    use: 'publicSite',
    text: ({ publicRoom }) => (publicRoom === 'not asked' ? undefined : publicRoom),
  },
};

/**
 * The texts that a job's survey gives to the lines of a recipe, by name, as they were typed where that is kept. What
 * nobody asked gives none.
 */
export function surveyGiven({ survey, typed }: Surveyed, lines: readonly Line[]): ReadonlyMap<string, GivenText> {
  const given = new Map<string, GivenText>();
  for (const [key, { use, text: textOf }] of Object.entries(givenBy)) {
    const text = textOf(survey);
    const line = text === undefined ? undefined : lineFor(lines, use);
    if (!line || text === undefined) continue;
    const asTyped = isSurveyKey(key) ? typedText(typed, key, fields[key], survey[key]) : undefined;
    const written = asTyped === undefined ? { text } : { text: asTyped, typed: true as const };
    given.set(line.name, { ...written, from: 'survey' });
  }
  return given;
}

type Surveyed = Pick<Job, 'survey' | 'typed'>;

/** No hours of sun strike no glass; some hours strike an area that is missing until it is measured. */
function sunArea({ sunHours, sunAreaM2 }: Survey): string | undefined {
  if (sunAreaM2 !== null || sunHours === null) return figure(sunAreaM2, 'm2');
  return sunHours === 0 ? '0 m2' : '';
}

function figure(value: number | null, unit: string): string | undefined {
  return value === null ? undefined : `${value} ${unit}`;
}

function percent(value: number | null): string | undefined {
  return figure(value === null ? null : cleanNoise(value * 100), '%');
}
