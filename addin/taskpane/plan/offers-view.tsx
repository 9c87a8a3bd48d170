/** The plans to choose from; the one chosen is shown and written. */
import type { Offer } from "../state/offers";

export function OffersView({
  offers,
  onChoose,
}: {
  offers: readonly Offer[];
  onChoose: (key: string | null) => void;
}) {
  return (
    <section aria-labelledby="mw-offers">
      <h2 id="mw-offers">Plans to choose from</h2>
      <fieldset class="mw-offers">
        <legend class="mw-unseen">Plan to show and write</legend>
        {offers.map((offer) => (
          <OfferView key={offer.key} offer={offer} onChoose={onChoose} />
        ))}
      </fieldset>
    </section>
  );
}

function OfferView({ offer, onChoose }: { offer: Offer; onChoose: (key: string | null) => void }) {
  const id = `mw-offer-${offer.key ?? "first"}`;
  return (
    <div class="mw-offer">
      <input
        type="radio"
        name="mw-offer"
        id={id}
        checked={offer.chosen}
        aria-describedby={`${id}-more`}
        onChange={() => onChoose(offer.key)}
      />
      <div>
        <label for={id}>{offer.title}</label>
        <ul id={`${id}-more`}>
          {offer.key === null && <li>Comes first by the rules’ costs</li>}
          {offer.gains.map((gain) => (
            <li key={gain} class="mw-gain">
              {gain}
            </li>
          ))}
          {offer.givesUp.map((loss) => (
            <li key={loss} class="mw-loss">
              {loss}
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
}
