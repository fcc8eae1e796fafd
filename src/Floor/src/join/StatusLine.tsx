import type { KeptFloor } from "../keep/keptFloor";
import { say } from "../words/say";
import type { Session } from "./session";
import { SettingsButton } from "./SettingsButton";
import { isNewerThere } from "./update";

/** A quiet line on top of a pupil's pages, always as high: whether what was done has arrived, and the settings. */
export function StatusLine({ session, floor }: { readonly session: Session; readonly floor: KeptFloor }) {
  const { isOnline, unsentCount, refused } = floor.delivery.value;
  const isWithoutServer = floor.lesson.token === undefined;
  const text =
    refused.length > 0
      ? say("SyncRefused", refused.length)
      : unsentCount > 0
        ? say(isOnline ? "SyncSending" : "SyncNoNetworkCount", unsentCount)
        : isOnline
          ? say("SyncOnline")
          : say("SyncNoNetwork");
  return (
    <div class="status-line">
      <p role="status" data-state={refused.length > 0 ? "refused" : isOnline || isWithoutServer ? "online" : "offline"}>
        <span class="dot" aria-hidden="true" />
        {text}
        {isNewerThere.value && <span class="muted">{` · ${say("SyncNewVersion")}`}</span>}
      </p>
      <SettingsButton session={session} />
    </div>
  );
}
