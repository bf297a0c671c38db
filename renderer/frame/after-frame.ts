import { pageSoon } from '#renderer/store/clock.ts';

const soon = pageSoon();

/** A hidden window draws no frames: then the callback runs after this time. */
const LONGEST_MS = 100;

/** Runs after the next frame is drawn and pending keys are handled; returns a function that cancels it. */
export function afterFrame(run: () => void): () => void {
  let isOff = false;
  const turn = () => {
    if (isOff) return;
    isOff = true;
    run();
  };
  const frame = requestAnimationFrame(() => soon(turn));
  const timer = setTimeout(turn, LONGEST_MS);
  return () => {
    isOff = true;
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}
