import { unitWords } from '#shared-calc/quantity/unit-words.ts';

/** A sentence of the core with its units in their written form: `27 degC` as `27 °C`, `0.5 m2` as `0.5 m²`. */
export function sayUnits(sentence: string): string {
  return sentence
    .replaceAll(/(?<=\d)[ \u00a0]degC\b/g, '\u00a0°C')
    .replaceAll(/(?<=\d)[ \u00a0]m2\b/g, '\u00a0m²')
    .replaceAll(/(?<=\d)[ \u00a0]mol\/m2\/d\b/g, '\u00a0mol/m²/d')
    .replaceAll(
      /(?<=\d)[ \u00a0](?:degF|F_deg|fl_oz|dry_qt|in2|ft2|in3|ft3)\b/g,
      (unit) => `\u00a0${unitWords(unit.slice(1), '')}`,
    )
    .replaceAll(/\bdegC\b/g, '°C');
}
