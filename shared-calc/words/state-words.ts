import type { Giver } from '#shared-calc/recipe/column.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';

/** Where a cell's text comes from, if not from the house or the builder's own hand. */
export const giverWords: Readonly<Record<Giver, string>> = { survey: 'as the survey', kind: 'as the kind' };

/** The state of a cell in words, shown at its left; none if it follows the house. */
export function stateWords(box: Box): readonly string[] {
  const words: string[] = [];
  if (box.state === 'job') words.push('whole job');
  else if (box.state === 'local') words.push(box.rule ? 'local rule' : 'local');
  else if (box.state === 'survey' || box.state === 'kind') words.push(giverWords[box.state]);
  else if (box.state === 'waiting') words.push(waitingWords(box));
  else if (box.state === 'loop') words.push('depends on itself');
  else if (box.state !== 'house') words.push(box.state);
  return [...words, ...box.flags];
}

function waitingWords(box: Box): string {
  const first = box.cause?.why === 'waits' ? box.cause.problem.line : undefined;
  return first === undefined || first === box.line.name ? 'no answer' : `waits on ${first}`;
}
