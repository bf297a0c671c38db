import type { BoxProblem } from './box-content.ts';

/** The engine carries one text with an error; our texts start with a marker of the cause. */
export const REFUSED = 'refused\n';

export function causeText(why: 'missing' | 'loop' | 'faulty'): string {
  return why;
}

/** Parses the engine's text back into a cause. */
export function readCause(message: string, type: string): Omit<BoxProblem, 'line'> {
  if (message === 'missing' || message === 'loop' || message === 'faulty') return { why: message };
  if (message.startsWith(REFUSED)) return { why: 'refused', says: message.split('\n').slice(2).join('\n') };
  return { why: type === 'DIV_BY_ZERO' ? 'divided by zero' : type === 'CYCLE' ? 'loop' : 'no number' };
}
