/** Round figures from `least` to at least `most`, in about five steps. */
export function roundTicks(most: number, least = 0): readonly number[] {
  const span = most - least;
  if (!(span > 0)) return [least, least + 1];
  const step = roundStep(span / 5);
  const first = Math.floor(least / step + 1e-9);
  const count = Math.ceil(most / step - 1e-9) - first;
  return Array.from({ length: count + 1 }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}

/** The next 1, 2 or 5 times a power of ten. */
function roundStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const times = [1, 2, 5, 10].find((each) => each * power >= rough * (1 - 1e-9)) ?? 10;
  return times * power;
}
