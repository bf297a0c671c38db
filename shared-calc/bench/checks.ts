import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { Figure } from '#shared-calc/engine/box-content.ts';
import type { CheckResult } from './bench-types.ts';
import type { Bench } from './open-bench.ts';
import type { Probe } from './probes.ts';
import { waitOf } from './waits.ts';

/**
 * Every check of a size, in the recipe's order; the braces of its sentence are filled with the size's own figures, or
 * with those of the first probe in which it does not hold. One that is not known yet says what it waits for instead. A
 * check that a range says better is left out.
 */
export function checksOf(bench: Bench, column: string, display: Display): readonly CheckResult[] {
  return bench
    .lines(column)
    .filter((line) => line.role === 'check')
    .flatMap((line) => checkOf(bench, column, line, display) ?? []);
}

/** One check of a size; nothing where it is not asked. */
export function checkOf(bench: Bench, column: string, line: Line, display: Display): CheckResult | undefined {
  const { state = 'not known yet', badIn = [] } = bench.box(column, line.name).check ?? {};
  if (state === 'not asked') return undefined;
  const probe = bench.ranges(column).probes.find(({ name }) => name === badIn[0]);
  const level = probe ? 'watch' : (line.level ?? 'watch');
  const says = checkSentence(bench, column, { line, probe, display });
  return { line, level, state, badIn, says, decides: line.decides ?? '' };
}

interface Said {
  readonly line: Line;
  readonly probe: Probe | undefined;
  readonly display: Display;
}

function checkSentence(bench: Bench, column: string, { line, probe, display }: Said): string {
  const likely = (name: string) => bench.box(column, name).value;
  const wait = waitOf(bench, column, line.name);
  if (wait) return `Cannot be worked yet: ${wait.what}.`;
  const lines = bench.lines(column);
  if (!probe) return fillSentence(line, lines, { valueOf: likely, display });
  const values = probe.values();
  const valueOf = (name: string) => {
    const probed = values[probe.lines.indexOf(name)];
    if (!probed) return likely(name);
    return probed.known ? probed.value : undefined;
  };
  const measure = probe.together ? 'Measure them' : 'Measure it';
  const sentence = fillSentence(line, lines, { valueOf, display });
  return `${sentence} It may not: ${probeWords(probe, lines, display)}. ${measure}.`.trimStart();
}

/** `warmth set right at 1.6`, or the guesses of a case together. */
function probeWords({ name, at, together }: Probe, lines: readonly Line[], display: Display): string {
  const guesses = lines.filter((line) => at.has(line.name));
  if (!together) return guesses.map((line) => guessWords(line, at.get(line.name), display)).join('');
  const labels = guesses.map((line) => inSentence(lineLabel(line)));
  return `${labels.slice(0, -1).join(', ')} and ${labels.at(-1) ?? ''} wrong together (${name})`;
}

function guessWords(line: Line, value: Figure | undefined, display: Display): string {
  return `${inSentence(lineLabel(line))} at ${value === undefined ? '' : showWithUnit(value, line.unit, display)}`;
}

interface Filling {
  readonly valueOf: (line: string) => Figure | undefined;
  readonly display: Display;
}

/** A sentence with a figure that is not known is not said: what it lacks is. */
function fillSentence(line: Line, lines: readonly Line[], { valueOf, display }: Filling): string {
  const { says = '' } = line;
  const lacks = lines.filter(({ name }) => says.includes(`{${name}}`) && valueOf(name) === undefined);
  if (lacks.length > 0) {
    const names = lacks.map((each) => inSentence(lineLabel(each))).join(', ');
    return `${lineLabel(line)}: ${names} not known yet.`;
  }
  return says.replaceAll(/\{(\w+)\}/g, (braces, name: string) => {
    const named = lines.find((each) => each.name === name);
    if (!named) return braces;
    const value = valueOf(name);
    return value === undefined ? braces : showWithUnit(value, named.unit, display);
  });
}
