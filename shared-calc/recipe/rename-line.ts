import type { Line } from '#shared-calc/records/records.ts';
import { renameInRule } from '#shared-calc/rule/rename-line.ts';

/** A line after another line of its recipe, or itself, was renamed. */
export function renamedLine(line: Line, from: string, to: string): Line {
  const says = line.says?.replaceAll(`{${from}}`, `{${to}}`);
  const isBareWord = line.unit === 'choice' && line.text !== from && !line.text.includes('(');
  return {
    ...line,
    name: line.name === from ? to : line.name,
    text: isBareWord ? line.text : renameInRule(line.text, from, to),
    ...(says !== undefined && { says }),
  };
}
