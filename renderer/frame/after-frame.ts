import { pageSoon } from '#renderer/store/clock.ts';

const soon = pageSoon();

/** Once the next frame is drawn and keys have been answered; answers how to call it off. */
export function afterFrame(run: () => void): () => void {
  let isOff = false;
  const turn = () => {
    if (!isOff) run();
  };
  const frame = requestAnimationFrame(() => soon(turn));
  return () => {
    isOff = true;
    cancelAnimationFrame(frame);
  };
}
