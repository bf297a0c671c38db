import type { ComponentChildren, Ref } from 'preact';
import css from './side-panel.module.css';

interface SidePanelParts {
  readonly label: string;
  /** `record` has smaller buttons. */
  readonly look?: 'record' | 'cell';
  /** A class from the view. */
  readonly class?: string | undefined;
  readonly panel?: Ref<HTMLElement>;
  readonly children?: ComponentChildren;
}

/** The panel at the right of the work, about what is selected there; one on a page, and F6 goes to it. */
export function SidePanel({ label, look = 'record', class: own, panel, children }: SidePanelParts) {
  const looks = [css['panel'], look === 'record' ? css['record'] : undefined, own];
  return (
    <aside ref={panel ?? null} class={looks.filter(Boolean).join(' ')} aria-label={label} id="side-panel" tabIndex={-1}>
      {children}
    </aside>
  );
}

interface PanelHeadParts {
  readonly where: ComponentChildren;
  readonly title: ComponentChildren;
  /** The figure at the right. */
  readonly answer?: ComponentChildren;
  /** A muted line under the title. */
  readonly under?: ComponentChildren;
  readonly children?: ComponentChildren;
}

/** The head of a side panel: where its subject is, its name, its figure. */
export function PanelHead({ where, title, answer, under, children }: PanelHeadParts) {
  return (
    <header>
      <p class={css['where']}>{where}</p>
      <h2>{title}</h2>
      {answer !== undefined && (
        <p class={css['answer']} data-part="answer">
          {answer}
        </p>
      )}
      {under !== undefined && <p class={css['under']}>{under}</p>}
      {children}
    </header>
  );
}
