import { boxReader } from '#shared-calc/bench/box-reader.ts';
import { valuesOver } from '#shared-calc/jobs/job-recipes.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { descendantsOf, lineIdIn } from '#shared-calc/recipe/family.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import type { Break, Need, RuleBreak } from './act-fault.ts';

/** What can be read with the lines before and not with the lines after. */
export function breaksOf(before: readonly Line[], after: readonly Line[]): readonly RuleBreak[] {
  const faulty = new Set(faultsIn(before).map((each) => each.line));
  return faultsIn(after).filter((each) => !faulty.has(each.line));
}

function faultsIn(lines: readonly Line[]): readonly RuleBreak[] {
  const reader = boxReader(lines);
  return lines.flatMap((line): readonly RuleBreak[] => {
    const reading = reader.read(line, line.text);
    return reading.is === 'faulty'
      ? [{ is: 'rule', line: line.name, label: lineLabel(line), fault: reading.fault }]
      : [];
  });
}

/** Lines whose rule or check sentence reads this one. */
export function readersOf(lines: readonly Line[], name: string): readonly Line[] {
  const reader = boxReader(lines);
  return lines.filter((line) => {
    if (line.says?.includes(`{${name}}`)) return true;
    const reading = reader.read(line, line.text);
    return reading.is === 'rule' && namesIn(reading.rule).includes(name);
  });
}

/** What stops a line from being removed: rules and sentences that read it, jobs that write it over, its use. */
export function needsOf(records: Records, line: Line): readonly Need[] {
  return [
    ...breaksWithout(records, line),
    ...(line.use === undefined ? [] : [{ is: 'use', use: line.use } as const]),
    ...jobsWriting(records, line).map((job) => ({ is: 'written', job }) as const),
    ...neededBelow(records, line),
  ];
}

/** What recipes that inherit the line need it for. */
function neededBelow(records: Records, line: Line): readonly Need[] {
  return descendantsOf(records, line.recipe).flatMap((recipe): readonly Need[] => {
    const lines = linesOf(records, recipe);
    const here = lines.find(({ id }) => id === lineIdIn(recipe, line));
    if (!here) return [];
    const known = new Set(breaksWithout(records, line).map((each) => each.line));
    const broken = breaksWithout(records, here).filter((each) => !known.has(each.line));
    const isChanged = [...records.difference.values()].some((mark) => mark.recipe === recipe && mark.line === here.id);
    return [
      ...broken.map((each) => ({ ...each, label: `${each.label} in ${recipe}` })),
      ...jobsWriting(records, here).map((job) => ({ is: 'written', job }) as const),
      ...(isChanged ? [{ is: 'changed below', recipe } as const] : []),
    ];
  });
}

/** What could not be worked out or said without a line: other lines of the recipe, and rules written in jobs. */
function breaksWithout(records: Records, line: Line): readonly Break[] {
  const lines = linesOf(records, line.recipe);
  const others = lines.filter((each) => each.id !== line.id);
  const broken = breaksOf(lines, others);
  const known = new Set(broken.map((each) => each.line));
  const said = others.filter((each) => !known.has(each.name) && each.says?.includes(`{${line.name}}`) === true);
  return [
    ...broken,
    ...said.map((each) => ({ is: 'sentence', line: each.name, label: lineLabel(each) }) as const),
    ...localReaders(records, line, lines),
  ];
}

function jobsWriting(records: Records, line: Line): readonly string[] {
  const values = valuesOver(records, line.recipe).filter((value) => value.line === line.name);
  return [...new Set(values.map((value) => value.job))];
}

function localReaders(records: Records, line: Line, lines: readonly Line[]): readonly Break[] {
  const reader = boxReader(lines);
  return valuesOver(records, line.recipe).flatMap((value): readonly Break[] => {
    const at = lines.find((each) => each.name === value.line);
    if (!at || at.id === line.id) return [];
    const reading = reader.read(at, value.text);
    if (reading.is !== 'rule' || !namesIn(reading.rule).includes(line.name)) return [];
    return [{ is: 'job rule', line: at.name, label: `${lineLabel(at)} in ${value.job}` }];
  });
}
