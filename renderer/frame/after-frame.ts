import { pageSoon } from '#renderer/store/clock.ts';

const soon = pageSoon();

/** A window that nobody sees draws no frames: it goes on after so long. */
const LONGEST_MS = 100;

/** Once the next frame is drawn and keys have been answered; answers how to call it off. */
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
