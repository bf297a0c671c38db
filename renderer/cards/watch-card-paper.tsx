import { Table } from '#renderer/kit/table.tsx';
import { Letterhead, Paper, Sheet, SignHere } from '#renderer/print/paper.tsx';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import type { WatchCard } from '#shared-calc/papers/watch-card.ts';
import { CautionList } from './caution-list.tsx';
import { toWrite, writeTable } from '#renderer/print/to-write.ts';

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
        <Sheet key={card.size} label={`Commissioning watch ${card.called}`}>
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
          <SignHere lines={['Hottest and coldest, °C; driest and dampest, %', 'Read by', 'Day']} />
        </Sheet>
      ))}
    </Paper>
  );
}

function ReadingsTable({ called, hours }: Pick<WatchCard, 'called' | 'hours'>) {
  return (
    <Table
      look="paper"
      class={writeTable}
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
