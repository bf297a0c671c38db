import { Table } from '#renderer/kit/table.tsx';
import { Facts, Letterhead, Paper } from '#renderer/print/paper.tsx';
import type { SurveyCard } from '#shared-calc/papers/survey-card.ts';
import { Minded } from './caution-list.tsx';
import { toWrite, writeTable } from '#renderer/print/to-write.ts';
import paper from '#renderer/print/paper.module.css';
import css from './survey-card.module.css';

export interface SurveyCardParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly card: SurveyCard;
}

/** What to measure and ask on site, with space to write. */
export function SurveyCardPaper({ title, letterhead, card }: SurveyCardParts) {
  return (
    <Paper label="Survey card" foot={`Survey card, ${title}`} look="large">
      <Letterhead title="Survey card" who={letterhead.slice(0, 1)} />
      <Facts facts={[['Job', title], ...card.known]} />
      {card.parts.map((part) => (
        <section key={part.title} class={paper['together']}>
          <h3>{part.title}</h3>
          <Table
            look="paper"
            class={`${writeTable} ${css['asks']}`}
            label={part.title}
            quietHeads
            rows={part.asks}
            keyOf={(ask) => ask}
            columns={[{ head: 'what', names: true, cell: (ask) => ask }, toWrite('found')]}
          />
        </section>
      ))}
      <Minded {...card} />
    </Paper>
  );
}
