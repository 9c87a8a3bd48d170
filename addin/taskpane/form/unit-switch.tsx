import { UNITS, type Unit } from "../../../engine/index";

interface Props {
  readonly unit: Unit;
  readonly onUnit: (unit: Unit) => void;
}

/** Kilograms or pounds for every mass of the form. */
export function UnitSwitch({ unit, onUnit }: Props) {
  return (
    <fieldset class="mw-switch" aria-describedby="mw-unit-hint">
      <legend class="mw-unseen">Unit of mass</legend>
      {UNITS.map((each) => (
        <label key={each}>
          <input
            type="radio"
            name="mw-unit"
            value={each}
            checked={unit === each}
            onChange={() => onUnit(each)}
          />
          <span>{each}</span>
        </label>
      ))}
    </fieldset>
  );
}
