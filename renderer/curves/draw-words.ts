import type uPlot from 'uplot';
import type { CurveSpec, CurveWords } from './curve-spec.ts';
import type { Ground } from './inks.ts';

export interface Brush {
  readonly ink: (name: Ground) => string;
  /** `12px …` in the page's font, scaled to the screen's pixels. */
  readonly font: (px: number, strong?: boolean) => string;
}

const SIZE = 12;

/** Draws units, phases, drops and words over the lines. */
export function drawWords(plot: uPlot, spec: CurveSpec, brush: Brush): void {
  const { ctx } = plot;
  ctx.save();
  ctx.setLineDash([]);
  drawUnits(plot, spec, brush);
  for (const phase of spec.phases ?? []) drawPhase(plot, phase, brush);
  for (const drop of spec.drops ?? []) drawDrop(plot, drop, brush);
  for (const words of spec.words ?? []) drawWord(plot, words, brush);
  ctx.restore();
}

/** Units are at the ends of the axes. */
function drawUnits(plot: uPlot, { across, up }: CurveSpec, brush: Brush): void {
  const { ctx, bbox } = plot;
  const px = step();
  ctx.fillStyle = brush.ink('muted');
  ctx.font = brush.font(SIZE * px);
  ctx.textBaseline = 'alphabetic';
  ctx.textAlign = 'left';
  ctx.fillText(up.unit, 0, SIZE * px);
  ctx.textAlign = 'right';
  ctx.fillText(across.unit, bbox.left + bbox.width, bbox.top + bbox.height + 38 * px);
}

type Phase = NonNullable<CurveSpec['phases']>[number];

function drawPhase(plot: uPlot, { from, to, words, strong = false }: Phase, brush: Brush): void {
  const { ctx, bbox } = plot;
  const px = step();
  const [left, right] = [from, to].map((at) => plot.valToPos(at, 'x', true));
  ctx.strokeStyle = brush.ink('rule-strong');
  ctx.lineWidth = px;
  ctx.setLineDash([px, 3 * px]);
  ctx.beginPath();
  ctx.moveTo(right ?? 0, bbox.top);
  ctx.lineTo(right ?? 0, bbox.top + bbox.height);
  ctx.stroke();
  ctx.setLineDash([]);
  const room = (right ?? 0) - (left ?? 0);
  ctx.font = brush.font(SIZE * px, strong);
  if (ctx.measureText(words).width > room) return;
  ctx.fillStyle = brush.ink(strong ? 'ink' : 'muted');
  ctx.textAlign = 'center';
  ctx.fillText(words, ((left ?? 0) + (right ?? 0)) / 2, bbox.top + SIZE * px);
}

type Drop = NonNullable<CurveSpec['drops']>[number];

function drawDrop(plot: uPlot, { across, from, to }: Drop, brush: Brush): void {
  const { ctx } = plot;
  const px = step();
  const x = plot.valToPos(across, 'x', true);
  const [top, foot] = [from, to].map((up) => plot.valToPos(up, 'y', true));
  ctx.strokeStyle = ctx.fillStyle = brush.ink('muted');
  ctx.lineWidth = px;
  ctx.beginPath();
  ctx.moveTo(x, top ?? 0);
  ctx.lineTo(x, foot ?? 0);
  ctx.stroke();
  ctx.beginPath();
  ctx.moveTo(x - 4 * px, (foot ?? 0) - 7 * px);
  ctx.lineTo(x + 4 * px, (foot ?? 0) - 7 * px);
  ctx.lineTo(x, foot ?? 0);
  ctx.fill();
}

const lies = { left: 'right', right: 'left', middle: 'center' } as const;

function drawWord(
  plot: uPlot,
  { at, words, ink, lie, away = -8, strong = false, dot = false }: CurveWords,
  brush: Brush,
): void {
  const { ctx } = plot;
  const px = step();
  const x = plot.valToPos(at[0], 'x', true);
  const y = plot.valToPos(at[1], 'y', true);
  if (dot) {
    ctx.fillStyle = brush.ink(ink);
    ctx.beginPath();
    ctx.arc(x, y, 3.5 * px, 0, 2 * Math.PI);
    ctx.fill();
  }
  const beside = lie === 'middle' ? 0 : (lie === 'right' ? 8 : -8) * px;
  ctx.font = brush.font(SIZE * px, strong);
  ctx.textAlign = lies[lie];
  ctx.lineJoin = 'round';
  ctx.lineWidth = 3 * px;
  ctx.strokeStyle = brush.ink('paper-raised');
  ctx.strokeText(words, x + beside, y + away * px);
  ctx.fillStyle = brush.ink(ink);
  ctx.fillText(words, x + beside, y + away * px);
}

/** Screen pixels per CSS px. */
function step(): number {
  return window.devicePixelRatio;
}
