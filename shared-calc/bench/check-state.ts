import type { CheckState } from './bench-types.ts';

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
