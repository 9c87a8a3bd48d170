/** Tells a screen reader what changed, once typing pauses. */
import { useEffect, useRef, useState } from "preact/hooks";

const PAUSE_MS = 900;

export function LiveRegion({ text }: { text: string }) {
  const [spoken, setSpoken] = useState("");
  const first = useRef(true);
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return undefined;
    }
    const timer = setTimeout(() => setSpoken(text), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <div class="mw-unseen" aria-live="polite" aria-atomic="true">
      {spoken}
    </div>
  );
}
