import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { alignPoints } from './align-points.ts';
import type { CurveLine, CurveSpec } from './curve-spec.ts';
import { drawWords, type Brush } from './draw-words.ts';
import { inksOf } from './inks.ts';
import { roundTicks } from './round-ticks.ts';

const HEIGHT = 300;
/** Narrower than this, px, the chart is not on the page. */
const LEAST_WIDTH = 40;

/** Draws a chart into its host, with the host's width and the current colours; returns a function that removes it. */
export function drawCurve(host: HTMLElement, spec: CurveSpec, decimalComma: boolean): () => void {
  const ink = inksOf(host);
  const family = getComputedStyle(host).fontFamily;
  const brush: Brush = { ink, font: (px, strong = false) => `${strong ? '600 ' : ''}${px}px ${family}` };
  const plot = new uPlot(
    optionsOf(spec, brush, decimalComma),
    alignPoints(spec.lines.flatMap(({ pieces }) => pieces)) as uPlot.AlignedData,
    host,
  );
  const fit = new ResizeObserver(() => {
    if (host.clientWidth > LEAST_WIDTH) plot.setSize({ width: host.clientWidth, height: HEIGHT });
  });
  const repaint = () => plot.redraw();
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const worn = new MutationObserver(repaint);
  fit.observe(host);
  dark.addEventListener('change', repaint);
  worn.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
  return () => {
    fit.disconnect();
    worn.disconnect();
    dark.removeEventListener('change', repaint);
    plot.destroy();
  };
}

function optionsOf(spec: CurveSpec, brush: Brush, decimalComma: boolean): uPlot.Options {
  const ups = spec.up.ticks ?? roundTicks(spec.up.most, spec.up.least);
  const acrosses = spec.across.ticks ?? roundTicks(spec.across.most);
  const write = (figure: number) => writeNumber(figure, decimalsOf(figure), { decimalComma });
  const axis = {
    stroke: () => brush.ink('muted'),
    font: brush.font(12),
    values: (_: uPlot, figures: number[]) => figures.map(write),
  };
  return {
    width: 600,
    height: HEIGHT,
    padding: [28, 12, 18, 0],
    legend: { show: false },
    cursor: { show: false },
    scales: {
      x: { time: false, range: [spec.across.least ?? 0, spec.across.most] },
      y: { range: [ups[0] ?? 0, ups.at(-1) ?? 1] },
    },
    axes: [
      {
        ...axis,
        size: 28,
        gap: 2,
        splits: () => [...acrosses],
        grid: { show: false },
        ticks: { stroke: () => brush.ink('muted'), width: 1, size: 5 },
      },
      {
        ...axis,
        size: 52,
        splits: () => [...ups],
        grid: { stroke: () => brush.ink('rule'), width: 1 },
        ticks: { show: false },
      },
    ],
    series: [{}, ...spec.lines.flatMap((line) => line.pieces.map(() => seriesOf(line, brush)))],
    hooks: { draw: [(plot) => drawWords(plot, spec, brush)] },
  };
}

function seriesOf({ ink, dashed = false, thin = false, filled = false }: CurveLine, brush: Brush): uPlot.Series {
  return {
    stroke: () => brush.ink(ink),
    width: thin ? 1.25 : 2,
    points: { show: false },
    ...(dashed && { dash: [5, 4] }),
    ...(filled && { fill: () => brush.ink('rule') }),
  };
}

function decimalsOf(figure: number): number {
  return Math.min(2, String(figure).split('.')[1]?.length ?? 0);
}
