import type { Box, CheckState } from './bench-types.ts';

/** The state of a check that guesses have no part in; an answer that is not there is not known yet. */
export function stateOfAnswer(holds: boolean | undefined): CheckState {
  if (holds === undefined) return 'not known yet';
  return holds ? 'holds' : 'fails';
}

/** Whether it surely holds, or surely fails; `undefined` while it is one or the other. */
export function answerOfState(state: CheckState): boolean | undefined {
  if (state === 'holds') return true;
  return state === 'fails' ? false : undefined;
}

/** What is written in place of yes or no for a check that is neither; `undefined` for any other cell. */
export function unsureWords({ check }: Pick<Box, 'check'>): string | undefined {
  return check?.state === 'may not hold' || check?.state === 'not asked' ? check.state : undefined;
}
