/** Calls `moved` whenever the user goes to another cell or writes something new; returns a function that stops it. */
export function onMovingOn(page: EventTarget, moved: () => void): () => void {
  let at: Element | undefined;
  const came = ({ target }: Event) => {
    const box = target instanceof Element ? target.closest('[role="gridcell"]') : null;
    if (!box || box === at) return;
    at = box;
    moved();
  };
  page.addEventListener('focusin', came);
  page.addEventListener('input', moved);
  return () => {
    page.removeEventListener('focusin', came);
    page.removeEventListener('input', moved);
  };
}
