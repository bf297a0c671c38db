import type { ComponentChildren } from 'preact';
import { usePageFoot } from './page-foot.ts';
import './papers.css';

interface PaperParts {
  /** What it is, for readers: "Quote Q-0027 A". */
  readonly label: string;
  /** At the foot of each printed page. */
  readonly foot: string;
  /** Larger type with boxes to tick, to be read with wet hands; or one page that hangs beside a tank, in two columns. */
  readonly look?: 'large' | 'hung';
  readonly children: ComponentChildren;
}

/** A sheet of paper, black on white on the page as in the printer. */
export function Paper({ label, foot, look, children }: PaperParts) {
  usePageFoot(foot);
  return (
    <article class={look === undefined ? 'paper' : `paper ${look}`} aria-label={label}>
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
    <header class="letterhead">
      <h2>{title}</h2>
      <p class="who">
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

/** What is known, one under the other; what has no words is left out. */
export function Facts({ facts }: FactsParts) {
  return (
    <dl class="facts">
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
