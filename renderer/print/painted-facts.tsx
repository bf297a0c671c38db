import type { PaperBlock } from '#shared-calc/papers/document.ts';
import { sayOnPaper } from '#shared-calc/words/say-on-paper.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { Totals } from './paper-sums.tsx';
import { Facts } from './paper.tsx';
import css from './painted-paper.module.css';

/** Names and figures: in a column, as sums, each on one line, or as settings side by side. */
export function PaintedFacts({ rows, look, main }: PaperBlock & { readonly is: 'facts' }) {
  const said = rows
    .filter(([, is]) => is !== '')
    .map(([what, is, decides]) => [sayOnPaper(what), sayOnPaper(is), decides] as const);
  switch (look) {
    case 'sums':
      return <Totals rows={said.map(([what, is]) => [what, is, what === main ? 'sum' : undefined])} />;
    case 'run in':
      return (
        <dl class={css['runIn']}>
          {said.map(([what, is, decides]) => (
            <div key={what}>
              <dt>{what}:</dt>{' '}
              <dd>
                {is} {decides !== undefined && <em>{whoDecides(decides)}.</em>}
              </dd>
            </div>
          ))}
        </dl>
      );
    case 'settings':
      return (
        <dl class={css['settings']}>
          {said.map(([what, is]) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{is}</dd>
            </div>
          ))}
        </dl>
      );
    default:
      return <Facts facts={said.map(([what, is]) => [what, is])} />;
  }
}
