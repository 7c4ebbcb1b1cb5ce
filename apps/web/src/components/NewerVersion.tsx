import { useSyncExternalStore } from "react";
import { listen, newerVersion, takeNewer } from "../offline/newerVersion.js";
import { useWords } from "../words/words.js";

/** Says quietly that a newer version is there; nothing changes until the person takes it. */
export function NewerVersion() {
  const say = useWords();
  const known = useSyncExternalStore(listen, newerVersion);
  return (
    <div role="status" className="newer-version">
      {known !== "none" && (
        <p>
          {say("page.newer")}{" "}
          <button type="button" onClick={takeNewer}>
            {say("page.takeNewer")}
          </button>
        </p>
      )}
    </div>
  );
}
