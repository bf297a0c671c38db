import { useMemo, useRef } from 'preact/hooks';
import type { Day } from '#shared-calc/calendar/day.ts';
import { writeShortDay, type DateOrder } from '#shared-calc/calendar/write-day.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { FigureTable } from './curve-spec.ts';
import { Plate } from './plate.tsx';
import { namedWeeks, shutStretches, timeScale, type TimeScale } from './time-scale.ts';
import { useWidth } from './use-width.ts';
import css from './time-line.module.css';

export interface TimeMark {
  readonly date: Day;
  /** `order` is hollow, `done` is solid. */
  readonly look: 'order' | 'done';
  readonly words?: string;
}

export interface TimeRow {
  readonly key: string;
  readonly name: string;
  readonly marks: readonly TimeMark[];
  /** Waiting, from the first mark to the last, or longer. */
  readonly wait?: { readonly from: Day; readonly to: Day };
  /** The critical chain: its line is heavy. */
  readonly decides?: boolean;
}

export interface TimeClash {
  readonly from: Day;
  readonly to: Day;
  readonly words: string;
}

interface TimeLineParts {
  readonly title: string;
  readonly under: string;
  readonly label: string;
  readonly rows: readonly TimeRow[];
  readonly clashes?: readonly TimeClash[];
  readonly today: Day;
  readonly calendar: WorkCalendar;
  readonly dateOrder: DateOrder | undefined;
  readonly table: FigureTable;
}

const ROW = 26;
const TOP = 30;
const FOOT = 22;
/** Room for the words at the last mark, px. */
const WORDS = 64;

/**
 * Jobs or steps over the days, on one scale. Orders are hollow; steps done or goods in are solid; waiting is a line.
 */
export function TimeLine({
  title,
  under,
  label,
  rows,
  clashes = [],
  today,
  calendar,
  dateOrder,
  table,
}: TimeLineParts) {
  const host = useRef<HTMLDivElement>(null);
  const width = useWidth(host, 900);
  const names = Math.min(190, Math.max(70, ...rows.map(({ name }) => name.length * 6.6 + 12)));
  const scale = useMemo(() => timeScale([today, ...daysIn(rows)], width - names - WORDS), [rows, today, width, names]);
  const height = TOP + rows.length * ROW + FOOT;
  return (
    <Plate title={title} under={under} table={table}>
      <div ref={host}>
        {scale && (
          <svg class={css['timeLine']} role="img" aria-label={label} width={names + scaleWidth(scale)} height={height}>
            <g transform={`translate(${names} 0)`}>
              <Ground scale={scale} calendar={calendar} dateOrder={dateOrder} height={height} />
              {clashes.map((clash) => (
                <ClashBox key={`${clash.from} ${clash.words}`} clash={clash} scale={scale} height={height} />
              ))}
            </g>
            {rows.map((row, at) => (
              <Row key={row.key} row={row} scale={scale} names={names} top={TOP + at * ROW} />
            ))}
            <g transform={`translate(${names} 0)`}>
              <path class={css['today']} d={`M${scale.at(today)} ${TOP - 6}V${height - FOOT + 4}`} />
              <text class={css['todayWord']} x={scale.at(today)} y={height - 6} text-anchor="middle">
                today
              </text>
            </g>
          </svg>
        )}
      </div>
    </Plate>
  );
}

function daysIn(rows: readonly TimeRow[]): readonly Day[] {
  return rows.flatMap(({ marks, wait }) => [...marks.map(({ date }) => date), ...(wait ? [wait.from, wait.to] : [])]);
}

function scaleWidth({ at, to, pxADay }: TimeScale): number {
  return Math.max(at(to) + pxADay / 2, at(to) + WORDS - 3 * pxADay);
}

interface GroundParts {
  readonly dateOrder: DateOrder | undefined;
  readonly scale: TimeScale;
  readonly calendar: WorkCalendar;
  readonly height: number;
}

function Ground({ scale, calendar, dateOrder, height }: GroundParts) {
  return (
    <>
      {shutStretches(scale, calendar).map(({ from, days }) => (
        <rect
          key={from}
          class={css['shut']}
          x={scale.at(from) - scale.pxADay / 2}
          y={TOP - 4}
          width={days * scale.pxADay}
          height={height - TOP - FOOT + 4}
        />
      ))}
      {namedWeeks(scale).map((day) => (
        <g key={day}>
          <path class={css['week']} d={`M${scale.at(day) - scale.pxADay / 2} ${TOP - 8}V${height - FOOT}`} />
          <text class={css['tick']} x={scale.at(day) - scale.pxADay / 2} y={TOP - 14} text-anchor="middle">
            {writeShortDay(day, dateOrder)}
          </text>
        </g>
      ))}
    </>
  );
}

interface RowParts {
  readonly row: TimeRow;
  readonly scale: TimeScale;
  readonly names: number;
  readonly top: number;
}

function Row({ row: { name, marks, wait, decides = false }, scale, names, top }: RowParts) {
  const middle = top + ROW / 2;
  return (
    <g class={decides ? css['decides'] : undefined}>
      <path class={css['rowRule']} d={`M0 ${top + ROW}H${names + scaleWidth(scale)}`} />
      <text x={2} y={middle + 4} font-weight={decides ? 600 : undefined}>
        {name}
      </text>
      <g transform={`translate(${names} 0)`}>
        {wait && <path class={css['wait']} d={`M${scale.at(wait.from)} ${middle}H${scale.at(wait.to)}`} />}
        {marks.map(({ date, look, words }) => (
          <g key={`${date} ${look} ${words ?? ''}`}>
            <circle class={css[look]} cx={scale.at(date)} cy={middle} r={4.5} />
            {words !== undefined && (
              <text x={scale.at(date) + 8} y={middle + 4}>
                {words}
              </text>
            )}
          </g>
        ))}
      </g>
    </g>
  );
}

function ClashBox({
  clash: { from, to, words },
  scale,
  height,
}: {
  readonly clash: TimeClash;
  readonly scale: TimeScale;
  readonly height: number;
}) {
  const left = scale.at(from) - Math.max(scale.pxADay / 2, 4);
  const right = scale.at(to) + Math.max(scale.pxADay / 2, 4);
  return (
    <>
      <rect
        class={css['clash']}
        data-part="clash"
        x={left}
        y={TOP - 3}
        width={right - left}
        height={height - TOP - FOOT + 6}
      />
      <text class={css['clashWord']} x={left} y={height - 6}>
        {words}
      </text>
    </>
  );
}
