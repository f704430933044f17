import type { UnitSystem } from '../../quantity/kinds.ts';
import type { PlotWords } from '../../words/worksheet-words.ts';
import type { Plot } from '../../worksheets/define.ts';
import { scaleOf } from './plot-scale.ts';
import { show } from './say.ts';

/** Drawn for a phone: the letters stay readable when the whole is 290 px wide. */
const [width, height] = [360, 270];
const frame = { left: 46, right: 350, top: 10, bottom: 228 };
/** Line patterns tell curves apart where colour cannot. */
const dashes = ['', '7 4', '2 4', '10 3 2 3'];
const letters = 'ABCDEFGH';

interface PlotProps {
  plot: Plot;
  words: PlotWords;
  units: UnitSystem;
}

/** Curves against limits, with a legend in words that says the same. */
export function PlotFigure({ plot, words, units }: PlotProps) {
  const x = scaleOf(plot.x, units, frame.left, frame.right, 6);
  const y = scaleOf(plot.y, units, frame.bottom, frame.top, 6);
  const inY = (value: number): boolean => value >= plot.y.low && value <= plot.y.high;
  const axisTitle = (title: string, symbol: string): string =>
    symbol === '' ? title : `${title} (${symbol})`;
  const markIds = [...new Set(plot.marks.map((mark) => mark.id))];
  return (
    <figure class="plot">
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.title}>
        <g stroke="currentColor" fill="none">
          {x.ticks.map(({ at }) => (
            <line key={at} x1={at} x2={at} y1={frame.top} y2={frame.bottom} stroke-opacity="0.18" />
          ))}
          {y.ticks.map(({ at }) => (
            <line key={at} x1={frame.left} x2={frame.right} y1={at} y2={at} stroke-opacity="0.18" />
          ))}
          <path d={`M${frame.left} ${frame.top}V${frame.bottom}H${frame.right}`} stroke-width="1.5" />
        </g>
        <g class="plot-text" fill="currentColor" font-size="12">
          {x.ticks.map(({ at, label }) => (
            <text key={at} x={at} y={frame.bottom + 15} text-anchor="middle">
              {label}
            </text>
          ))}
          {y.ticks.map(({ at, label }) => (
            <text key={at} x={frame.left - 5} y={at + 4} text-anchor="end">
              {label}
            </text>
          ))}
          <text x={(frame.left + frame.right) / 2} y={height - 8} text-anchor="middle">
            {axisTitle(words.x, x.unit.symbol)}
          </text>
          <text
            x={11}
            y={(frame.top + frame.bottom) / 2}
            text-anchor="middle"
            transform={`rotate(-90 11 ${(frame.top + frame.bottom) / 2})`}
          >
            {axisTitle(words.y, y.unit.symbol)}
          </text>
        </g>
        {plot.levels.map((level, each) => {
          const at = level.axis === 'y' ? y.place(level.at) : x.place(level.at);
          const line =
            level.axis === 'y'
              ? { x1: frame.left, x2: frame.right, y1: at, y2: at }
              : { x1: at, x2: at, y1: frame.top, y2: frame.bottom };
          const tag =
            level.axis === 'y'
              ? { x: frame.right - 9 - 19 * each, y: at }
              : { x: at, y: frame.top + 9 + 19 * each };
          return (
            <g key={level.id} class="plot-level">
              <line {...line} stroke="currentColor" stroke-width="1.2" stroke-dasharray="5 3" />
              <circle cx={tag.x} cy={tag.y} r="8" class="plot-tag" stroke="currentColor" />
              <text x={tag.x} y={tag.y + 4} text-anchor="middle" font-size="11" fill="currentColor">
                {letters[each]}
              </text>
            </g>
          );
        })}
        {plot.curves.map((curve, each) => (
          <polyline
            key={curve.id}
            class="plot-curve"
            data-curve={each}
            fill="none"
            stroke-width="2.5"
            stroke-dasharray={dashes[each % dashes.length]}
            points={curve.points
              .filter(([, value]) => inY(value))
              .map(([px, py]) => `${x.place(px).toFixed(1)},${y.place(py).toFixed(1)}`)
              .join(' ')}
          />
        ))}
        {plot.marks
          .filter((mark) => inY(mark.y))
          .map((mark, each) => (
            <g
              key={each}
              transform={`translate(${x.place(mark.x).toFixed(1)} ${y.place(mark.y).toFixed(1)})`}
            >
              <MarkShape shape={markIds.indexOf(mark.id)} />
            </g>
          ))}
      </svg>
      <figcaption>
        <p>{words.title}</p>
        <ul class="plot-legend">
          {plot.curves.map((curve, each) => (
            <li key={curve.id}>
              <svg viewBox="0 0 36 12" width="36" height="12" aria-hidden="true">
                <line
                  x1="0"
                  x2="36"
                  y1="6"
                  y2="6"
                  class="plot-curve"
                  data-curve={each}
                  stroke-width="2.5"
                  stroke-dasharray={dashes[each % dashes.length]}
                />
              </svg>
              {words.lines[curve.id]}
            </li>
          ))}
          {plot.levels.map((level, each) => (
            <li key={level.id}>
              <b class="plot-letter">{letters[each]}</b>
              {words.lines[level.id]}: {shownAt(plot, level.axis, level.at, units)}
            </li>
          ))}
          {markIds.map((id, shape) => {
            const mark = plot.marks.find((each) => each.id === id)!;
            const only = plot.marks.filter((each) => each.id === id).length === 1;
            return (
              <li key={id}>
                <svg viewBox="-8 -8 16 16" width="16" height="16" aria-hidden="true">
                  <MarkShape shape={shape} />
                </svg>
                {words.lines[id]}
                {only && `: ${shownAt(plot, 'y', mark.y, units)}, ${shownAt(plot, 'x', mark.x, units)}`}
              </li>
            );
          })}
        </ul>
      </figcaption>
    </figure>
  );
}

const shownAt = (plot: Plot, axis: 'x' | 'y', value: number, units: UnitSystem): string =>
  show(value, plot[axis].kind, units, { unit: plot[axis].unit });

/** Circle, square, diamond, triangle: told apart without colour. */
function MarkShape({ shape }: { shape: number }) {
  const paths = [
    'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0z',
    'M-5 -5h10v10h-10z',
    'M0 -7L7 0L0 7L-7 0z',
    'M0 -6L6 5H-6z',
  ];
  return <path d={paths[shape % paths.length]} class="plot-mark" stroke="currentColor" stroke-width="2" />;
}
