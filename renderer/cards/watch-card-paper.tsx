import { Table } from '#renderer/kit/table.tsx';
import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import type { WatchCard } from '#shared-calc/papers/watch-card.ts';
import { CautionList } from './caution-list.tsx';
import { toWrite } from './to-write.ts';
import './cards.css';

export interface WatchCardParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly cards: readonly WatchCard[];
}

/** Readings over 24 to 72 h with the lamps on: one card a size, to be filled in and signed. */
export function WatchCardPaper({ title, letterhead, cards }: WatchCardParts) {
  return (
    <Paper label="Commissioning watch" foot={`Commissioning watch, ${title}`} look="large">
      {cards.map((card) => (
        <section key={card.size} class="sheet-of-list">
          <Letterhead title={`Commissioning watch ${card.called}`} who={letterhead.slice(0, 1)} />
          <p>
            {title}. {card.tank}. Lamps on, doors shut. Between {sayUnits(card.coldest)} and {sayUnits(card.hottest)},
            humidity between {card.band.driest} and {card.band.dampest}&nbsp;%, for {card.leastHours} h at least.
          </p>
          {card.expected.map((says) => (
            <p key={says}>{sayUnits(says)}</p>
          ))}
          <ReadingsTable called={card.called} hours={card.hours} />
          <CautionList cautions={card.cautions} />
          <div class="sign-here">
            <p>Hottest and coldest, °C; driest and dampest, %</p>
            <p>Read by</p>
            <p>Day</p>
          </div>
        </section>
      ))}
    </Paper>
  );
}

function ReadingsTable({ called, hours }: Pick<WatchCard, 'called' | 'hours'>) {
  return (
    <Table
      look="paper"
      class="to-write"
      scroll={`Readings of ${called}`}
      rows={hours}
      keyOf={(hour) => hour}
      columns={[
        { head: 'Hour', figure: true, cell: (hour) => hour },
        ...['Day, time', '°C now', 'Hottest', 'Coldest', 'Humidity %', 'Who'].map(toWrite),
      ]}
    />
  );
}
