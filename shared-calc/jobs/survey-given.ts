import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Survey, SurveyKey } from '#shared-calc/fields/survey.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { GivenText } from '#shared-calc/recipe/column.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** The texts that a survey gives to the lines of a recipe, by name. What nobody asked gives none. */
export function surveyGiven(survey: Survey, lines: readonly Line[]): ReadonlyMap<string, GivenText> {
  const given = new Map<string, GivenText>();
  for (const [use, text] of textsOf(survey)) {
    const line = text === undefined ? undefined : lineFor(lines, use);
    if (line && text !== undefined) given.set(line.name, { text, from: 'survey' });
  }
  return given;
}

/** The use of the line that an answer gives its figure to. */
export const givenUses: { readonly [K in SurveyKey]?: UseName } = {
  shelfRatingKg: 'shelfRating',
  roomSummerC: 'roomSummer',
  roomWinterC: 'roomWinter',
  roomLowestC: 'roomLowest',
  humiditySummer: 'humiditySummer',
  humidityWinter: 'humidityWinter',
  sunAreaM2: 'sunArea',
  sunHours: 'sunArea',
  publicRoom: 'publicSite',
};

function textsOf(survey: Survey): readonly (readonly [use: UseName, text: string | undefined])[] {
  return [
    ['shelfRating', figure(survey.shelfRatingKg, 'kg')],
    ['roomSummer', figure(survey.roomSummerC, 'degC')],
    ['roomWinter', figure(survey.roomWinterC, 'degC')],
    ['roomLowest', figure(survey.roomLowestC, 'degC')],
    ['humiditySummer', percent(survey.humiditySummer)],
    ['humidityWinter', percent(survey.humidityWinter)],
    ['sunArea', sunArea(survey)],
    ['publicSite', survey.publicRoom === 'not asked' ? undefined : survey.publicRoom],
  ];
}

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
