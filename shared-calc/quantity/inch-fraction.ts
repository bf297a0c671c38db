/** A rule is divided into sixteenths; what is small is read to sixty-fourths. */
const divisions = [16, 32, 64];
/** What is read off the rule is within this share of the figure: 6 mm is 1/4 in, 1 mm no fraction at all. */
const WITHIN = 0.06;
/** Beyond this many inches a rule's sixteenths say more than the figure does. */
const MOST = 1000;

/** Inches as a person reads them off a rule: `23 5/8`, `3/16`, `24`; `undefined` for what no rule shows. */
export function inchFraction(inches: number): string | undefined {
  const size = Math.abs(inches);
  if (size === 0) return '0';
  if (size >= MOST) return undefined;
  for (const parts of divisions) {
    const read = Math.round(size * parts);
    if (Math.abs(read / parts - size) <= WITHIN * size) return write(read, parts, inches < 0);
  }
  return undefined;
}

function write(read: number, parts: number, isNegative: boolean): string {
  const whole = Math.floor(read / parts);
  let [over, under] = [read % parts, parts];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const words = [whole > 0 || over === 0 ? String(whole) : '', over > 0 ? `${over}/${under}` : ''];
  return `${isNegative ? '-' : ''}${words.filter((word) => word !== '').join(' ')}`;
}
