/** The plan as a strip of weeks: mesocycles, kinds of week, and one lane a lift. */
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Plan } from "../../../engine/index";
import { PHASE_COLOURS } from "../../sheets/colours";
import { layOutStrip, STRIP, type StripLayout } from "./strip-layout";
import { KindMark, StripLegend } from "./strip-marks";

const LEAST_WIDTH = 280;

export function Strip({ plan, description }: { plan: Plan; description: string }) {
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(LEAST_WIDTH);
  useLayoutEffect(() => {
    const element = box.current!;
    const measure = (): void => setWidth(Math.max(LEAST_WIDTH, Math.floor(element.clientWidth)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return (
    <div class="mw-strip" ref={box}>
      <StripDrawing layout={layOutStrip(plan, width)} description={description} />
      <StripLegend kinds={new Set(plan.weeks.map((week) => week.kind))} />
    </div>
  );
}

function StripDrawing({ layout, description }: { layout: StripLayout; description: string }) {
  const { width, height, tops } = layout;
  return (
    <svg
      width={width}
      height={height}
      role="img"
      aria-labelledby="mw-strip-title"
      aria-describedby="mw-strip-desc"
    >
      <title id="mw-strip-title">Weeks to the meet</title>
      <desc id="mw-strip-desc">{description} The same weeks follow as a table.</desc>
      {layout.months.map(({ x, label }) => (
        <text key={x} x={x} y={12} class="mw-strip-small">
          {label}
        </text>
      ))}
      <text x={width} y={12} text-anchor="end" class="mw-strip-small mw-strip-meet">
        {layout.meetLabel}
      </text>
      <LaneLabel y={tops.mesocycle + STRIP.mesocycle / 2} text="Weeks" />
      {layout.mesocycles.map(({ x, width: span, label }) => (
        <g key={x}>
          <path class="mw-strip-bracket" d={`M${x + 1.5} ${tops.kinds - 1}v-3h${span - 3}v3`} />
          <text x={x + span / 2} y={tops.kinds - 7} text-anchor="middle" class="mw-strip-small">
            {label}
          </text>
        </g>
      ))}
      {layout.weeks.map((week) => (
        <KindMark
          key={week.x}
          kind={week.kind}
          x={week.x}
          y={tops.kinds}
          width={week.width}
          height={STRIP.kinds}
        />
      ))}
      {layout.lanes.map((lane) => (
        <Lane key={lane.lift} lane={lane} layout={layout} />
      ))}
      {layout.weeks.map((week) => (
        <rect key={week.x} x={week.x} y={0} width={week.width} height={height} fill="transparent">
          <title>{week.tip}</title>
        </rect>
      ))}
    </svg>
  );
}

function Lane({ lane, layout }: { lane: StripLayout["lanes"][number]; layout: StripLayout }) {
  const easy = layout.weeks.filter((week) => week.kind === "deload");
  return (
    <g>
      <LaneLabel y={lane.y + STRIP.lane / 2} text={lane.lift.charAt(0).toUpperCase() + lane.lift.slice(1)} />
      {layout.weeks.map((week) =>
        week.kind === "bridge" ? (
          <line
            key={week.x}
            class="mw-strip-bridge"
            x1={week.x + 2}
            x2={week.x + week.width - 2}
            y1={lane.y + STRIP.lane / 2}
            y2={lane.y + STRIP.lane / 2}
          />
        ) : null,
      )}
      {lane.runs.map((run) => (
        <g key={run.x}>
          <rect
            class="mw-strip-phase"
            x={run.x + 0.5}
            y={lane.y}
            width={run.width - 1}
            height={STRIP.lane}
            rx={2}
            fill={PHASE_COLOURS[run.phase].fill}
          />
          <text
            class="mw-strip-word"
            x={run.x + run.width / 2}
            y={lane.y + STRIP.lane / 2 + 5}
            text-anchor="middle"
            fill={PHASE_COLOURS[run.phase].text}
          >
            {run.label}
          </text>
        </g>
      ))}
      {easy.map((week) => (
        <path key={week.x} class="mw-strip-notch" d={notch(week.x, lane.y, week.width)} />
      ))}
    </g>
  );
}

/** A small wedge cut into a lane's top edge. */
function notch(x: number, y: number, width: number): string {
  const half = Math.min(5, width / 2);
  return `M${x + width / 2 - half} ${y - 0.5}h${2 * half}l${-half} 6z`;
}

function LaneLabel({ y, text }: { y: number; text: string }) {
  return (
    <text x={0} y={y + 4} class="mw-strip-label">
      {text}
    </text>
  );
}
