/** A sentence of the core with its units in their written form: `27 degC` as `27 °C`, `0.5 m2` as `0.5 m²`. */
export function sayUnits(sentence: string): string {
  return sentence
    .replaceAll(/(?<=\d)[ \u00a0]degC\b/g, '\u00a0°C')
    .replaceAll(/(?<=\d)[ \u00a0]m2\b/g, '\u00a0m²')
    .replaceAll(/(?<=\d)[ \u00a0]mol\/m2\/d\b/g, '\u00a0mol/m²/d')
    .replaceAll(/\bdegC\b/g, '°C');
}
