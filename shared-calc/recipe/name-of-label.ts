/** A name has 60 at most; there is room for an ending. */
const MOST_LETTERS = 45;

/** A label as a name in rules that is not taken: `Aged bark` is `aged_bark`, `aged_bark_2`, or `line` of bare signs. */
export function nameOfLabel(label: string, isTaken: (name: string) => boolean): string {
  const letters = label.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
  const bare =
    letters
      .replaceAll(/[^a-z0-9]+/g, '_')
      .replaceAll(/^[_\d]+|_+$/g, '')
      .slice(0, MOST_LETTERS) || 'line';
  let name = bare;
  for (let nth = 2; isTaken(name); nth += 1) name = `${bare}_${nth}`;
  return name;
}
