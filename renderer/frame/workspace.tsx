import type { ComponentChildren } from 'preact';
import { DrawingPatterns } from '#renderer/drawing/drawing-patterns.tsx';
import type { PlaceId } from '#shared-calc/contract/places.ts';
import { Rail } from './rail.tsx';
import { SignDrawings } from './sign-drawings.tsx';

interface WorkspaceParts {
  readonly here: PlaceId;
  readonly workshop: string;
  readonly work: ComponentChildren;
  /** The working panel, where the place has one. */
  readonly slip?: ComponentChildren;
  readonly line: ComponentChildren;
}

/** The whole page: places at the left, the work, the working panel at the right, one quiet line below. */
export function Workspace({ here, workshop, work, slip, line }: WorkspaceParts) {
  return (
    <div class={slip === undefined ? 'desk without-slip' : 'desk'}>
      <SignDrawings />
      <DrawingPatterns />
      <a class="skip" href="#work" onClick={focusWork}>
        To the work
      </a>
      <Rail here={here} workshop={workshop} />
      {work}
      {slip}
      {line}
    </div>
  );
}

/** The link's hash is the page's place, so that the jump is made from code. */
function focusWork(event: Event): void {
  event.preventDefault();
  const work = document.getElementById('work');
  work?.focus();
}
