import { Facts, Letterhead, Paper } from '#renderer/print/paper.tsx';
import type { SurveyCard } from '#shared-calc/papers/survey-card.ts';
import { Minded } from './caution-list.tsx';
import './cards.css';

export interface SurveyCardParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly card: SurveyCard;
}

/** What is measured and asked on site, to be written in there. */
export function SurveyCardPaper({ title, letterhead, card }: SurveyCardParts) {
  return (
    <Paper label="Survey card" foot={`Survey card, ${title}`} look="large">
      <Letterhead title="Survey card" who={letterhead.slice(0, 1)} />
      <Facts facts={[['Job', title], ...card.known]} />
      {card.parts.map((part) => (
        <section key={part.title} class="together">
          <h3>{part.title}</h3>
          <table class="paper-lines to-write asks">
            <thead class="unseen">
              <tr>
                <th scope="col">what</th>
                <th scope="col">found</th>
              </tr>
            </thead>
            <tbody>
              {part.asks.map((ask) => (
                <tr key={ask}>
                  <th scope="row">{ask}</th>
                  <td />
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
      <Minded {...card} />
    </Paper>
  );
}
