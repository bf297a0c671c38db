import type { ComponentChildren } from 'preact';
import { usePageFoot } from './page-foot.ts';
import { usePaperName } from './paper-name.ts';
import css from './paper.module.css';

interface PaperParts {
  /** Its name, for screen readers: "Quote Q-0027 A". */
  readonly label: string;
  /** Foot of each printed page. */
  readonly foot: string;
  /**
   * `large`: larger type with boxes to tick, for wet hands. `hung`: one page in two columns that hangs next to a tank.
   * `sideways`: for wide tables.
   */
  readonly look?: 'large' | 'hung' | 'sideways';
  readonly children: ComponentChildren;
}

/** A sheet of paper, black on white both on the page and in print. */
export function Paper({ label, foot, look, children }: PaperParts) {
  usePageFoot(foot);
  usePaperName(label);
  return (
    <article class={look === undefined ? css['paper'] : `${css['paper']} ${css[look]}`} aria-label={label} data-paper>
      {children}
    </article>
  );
}

interface LetterheadParts {
  readonly title: string;
  /** The first line is the name. */
  readonly who: readonly string[];
}

export function Letterhead({ title, who: [name = '', ...rest] }: LetterheadParts) {
  return (
    <header class={css['letterhead']}>
      <h2>{title}</h2>
      <p class={css['who']}>
        <b>{name}</b>
        {rest.map((line) => (
          <span key={line}>{line}</span>
        ))}
      </p>
    </header>
  );
}

interface FactsParts {
  readonly facts: readonly (readonly [what: string, is: string])[];
}

/** Facts in a column; a fact without words is left out. */
export function Facts({ facts }: FactsParts) {
  return (
    <dl class={css['facts']}>
      {facts
        .filter(([, is]) => is !== '')
        .map(([what, is]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{is}</dd>
          </div>
        ))}
    </dl>
  );
}

interface SheetParts {
  /** Its name, for screen readers. */
  readonly label: string;
  readonly class?: string | undefined;
  readonly children: ComponentChildren;
}

/** One of several sheets of a paper, which begins on a page of its own. */
export function Sheet({ label, class: look, children }: SheetParts) {
  return (
    <section class={look === undefined ? css['sheet'] : `${css['sheet']} ${look}`} aria-label={label}>
      {children}
    </section>
  );
}

/** Lines to sign on. */
export function SignHere({ lines }: { readonly lines: readonly string[] }) {
  return (
    <div class={css['signHere']}>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}
