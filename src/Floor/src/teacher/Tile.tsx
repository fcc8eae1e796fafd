import { Mark } from "../ui/Mark";
import { say } from "../words/say";
import { seenOf } from "./seen";
import { agoShort, ago, deviceText, taskLetter } from "./teacherWords";
import type { Teaching } from "./teaching";

/** A device that said nothing for so long is drawn as an open ring. */
const quietS = 60;
const mostDots = 6;

export interface TileProps {
  readonly teaching: Teaching;
  readonly pupilId: string;
  /** While the register is taken a tap says who is absent; else it opens the pupil's sheet. */
  readonly isRegister: boolean;
}

/** A pupil at a glance: who, how long not seen, where in the sheet, and quiet signs. */
export function Tile({ teaching, pupilId, isRegister }: TileProps) {
  const { floor } = teaching;
  const label = teaching.labelOf(pupilId);
  const isAbsent = teaching.absent.value.has(pupilId);
  const { visitCount, lastAtMs } = seenOf(teaching.seen.value, pupilId);
  const isUnsafe = teaching.unsafe.value.has(pupilId);
  const isAsked = !isUnsafe && teaching.questionsById.value.has(pupilId);
  const nowMs = teaching.calmNowMs.value;
  const seenShort = lastAtMs === undefined ? say("TeacherNotYet") : `${visitCount}× · ${agoShort(lastAtMs, nowMs)}`;

  const place = teaching.where.value.get(pupilId);
  const bundle = floor.bundle.value;
  const taskAt = place ? bundle.tasks.findIndex((t) => t.taskId === place.taskId) : -1;
  const device = teaching.deviceByPupil.value.get(pupilId);
  const isQuiet = !device?.seenAt || teaching.calmServerMs.value - Date.parse(device.seenAt) > quietS * 1000;

  // The signs in words; the name stands before them.
  const words = [
    isAbsent ? say("TeacherAbsent") : lastAtMs === undefined ? say("TeacherNotSeenYet") : visitCount === 1 ? say("TeacherSeenOnce", ago(lastAtMs, nowMs)) : say("TeacherSeenTimes", visitCount, ago(lastAtMs, nowMs)),
    isUnsafe && say("TeacherSafetyShort"),
    isAsked && say("TeacherHasQuestion"),
    place && say("TeacherPlace", bundle.tasks[taskAt]?.name ?? "", place.setNumber, place.trialCount, bundle.trialCount),
    device && say(isQuiet ? "TeacherDeviceQuiet" : "TeacherDeviceThere", deviceText(device.name)),
  ].filter(Boolean);
  const looks = ["tile", isAbsent && "absent", visitCount === 0 && "fresh", isUnsafe && "unsafe"].filter(Boolean).join(" ");

  const press = () =>
    isRegister
      ? void teaching.write(say(isAbsent ? "TeacherSaidHere" : "TeacherSaidAbsent", label), [[{ pupilId }, { kind: "presence", isPresent: isAbsent }]])
      : teaching.open({ tab: "class", pupilId });

  return (
    <button type="button" class={looks} data-pupil={pupilId} aria-pressed={isRegister ? isAbsent : undefined} onClick={press}>
      <span class="tile-name">{label}</span>
      <span class="unseen">{words.join(". ")}</span>
      <span class="tile-signs" aria-hidden="true">
        {isUnsafe && <Mark name="caution" />}
        {isAsked && !isRegister && <span class="tile-ask">?</span>}
        {device && !isRegister && <span class={isQuiet ? "tile-device quiet" : "tile-device"} />}
      </span>
      <span class="tile-seen" aria-hidden="true">{isAbsent ? say("TeacherAbsent") : isRegister ? say("TeacherHere") : seenShort}</span>
      {place && !isAbsent && !isRegister && (
        <span class="tile-place" aria-hidden="true">
          {bundle.tasks.length > 1 && taskLetter(taskAt)}
          {place.setNumber}
          {bundle.trialCount > mostDots ? (
            <span class="tile-tries">
              {place.trialCount}/{bundle.trialCount}
            </span>
          ) : (
            Array.from({ length: bundle.trialCount }, (_, i) => <i key={i} class={i < place.trialCount ? "dot on" : "dot"} />)
          )}
        </span>
      )}
    </button>
  );
}
