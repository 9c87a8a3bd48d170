/** What the engine made of the lifter, as a short list of facts. */
import type { Assessment } from "../../../engine/index";

export function AssessmentView({ assessment }: { assessment: Assessment }) {
  return (
    <section aria-labelledby="mw-assessment">
      <h2 id="mw-assessment">Assessment</h2>
      <dl class="mw-facts">
        {factsOf(assessment).map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function factsOf(assessment: Assessment): readonly (readonly [string, string])[] {
  const { level, className, size, hardWeeks, prepRange, dots, percentile } = assessment;
  return [
    ["Level", level],
    ["Class", `${className}, ${size}`],
    ["Mesocycle", `${hardWeeks} hard weeks + 1`],
    ["Preparation", `${prepRange.least}–${prepRange.most} weeks`],
    ...(dots === null ? [] : [["DOTS", dots.toFixed(1)] as const]),
    ...(percentile === null ? [] : [["Percentile", String(Math.round(percentile))] as const]),
  ];
}
