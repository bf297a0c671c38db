import type { ComponentChildren } from 'preact';
import { DrawingPatterns } from '#renderer/drawing/drawing-patterns.tsx';
import type { PlaceId } from '#shared-calc/contract/places.ts';
import type { JobSwitchView } from './page-view.ts';
import { Rail } from './rail.tsx';
import { SignDrawings } from './sign-drawings.tsx';
import css from './workspace.module.css';

interface WorkspaceParts {
  readonly here: PlaceId;
  readonly workshop: string;
  readonly jobs: JobSwitchView | undefined;
  readonly work: ComponentChildren;
  /** The side panel, if the view has one. */
  readonly sidePanel?: ComponentChildren;
  /** The help panel, while it is open. */
  readonly help: ComponentChildren;
  readonly showHelp: () => void;
  readonly line: ComponentChildren;
}

/** The whole page: views at the left, the work, the side panel at the right, the status line below. */
export function Workspace({ here, workshop, jobs, work, sidePanel, help, showHelp, line }: WorkspaceParts) {
  return (
    <div
      class={sidePanel === undefined ? `${css['page']} ${css['withoutPanel']}` : css['page']}
      data-help={help === undefined ? undefined : ''}
    >
      <SignDrawings />
      <DrawingPatterns />
      <a class={css['skip']} href="#work" onClick={focusWork}>
        To the work
      </a>
      <Rail here={here} workshop={workshop} jobs={jobs} showHelp={showHelp} />
      {work}
      {sidePanel}
      {help}
      {line}
    </div>
  );
}

/** The link's hash is the page's route, so the jump is made in code. */
function focusWork(event: Event): void {
  event.preventDefault();
  const work = document.getElementById('work');
  work?.focus();
}
