/** What a coach should know beside the plan: always in view. */
export function Cautions({ cautions }: { cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  return (
    <section aria-labelledby="mw-cautions">
      <h2 id="mw-cautions">Beware</h2>
      <ul class="mw-cautions">
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}
