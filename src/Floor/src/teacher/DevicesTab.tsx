import { useState } from "preact/hooks";
import type { DeviceSeen } from "../contracts";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { ago, count, deviceText, kindText } from "./teacherWords";
import type { Teaching } from "./teaching";

const kinds: readonly DeviceSeen["kind"][] = ["pupil", "pair", "station", "board", "teacher"];

/** Every device of the lesson: whom it serves, when it last spoke, what it still holds; lock, rename, free. */
export function DevicesTab({ teaching }: { readonly teaching: Teaching }) {
  const { devices, delivery } = teaching.floor;
  const { refused, unsentCount } = delivery.value;
  const [openId, setOpenId] = useState<string | undefined>();
  const shown = [...devices.value].sort((a, b) => Number(a.hasLeft) - Number(b.hasLeft) || kinds.indexOf(a.kind) - kinds.indexOf(b.kind) || a.name.localeCompare(b.name, undefined, { numeric: true }));
  return (
    <section class="tab" aria-label={say("TeacherTabDevices")}>
      <h1 class="tab-head">
        {teaching.unsentCount.value === 0 ? say("TeacherAllSent") : count(teaching.unsentCount.value, "TeacherUnsentOne", "TeacherUnsentMany")}
        <span class="small muted">{unsentCount === 0 ? say("TeacherOwnSent") : count(unsentCount, "TeacherOwnUnsentOne", "TeacherOwnUnsentMany")}</span>
      </h1>
      {refused.length > 0 && (
        <Banner kind="problem">
          <p><strong>{count(refused.length, "TeacherRefusedOne", "TeacherRefusedMany")}</strong></p>
          <ul>{refused.map((r) => <li key={r.entry.id}>{r.text}</li>)}</ul>
        </Banner>
      )}
      {shown.length === 0 ? (
        <p class="empty">{say("TeacherNoDevice")}</p>
      ) : (
        <ul class="devices">
          {shown.map((device) => (
            <Device key={device.deviceId} teaching={teaching} device={device} isOpen={openId === device.deviceId} onOpen={() => setOpenId(openId === device.deviceId ? undefined : device.deviceId)} />
          ))}
        </ul>
      )}
    </section>
  );
}

interface DeviceProps {
  readonly teaching: Teaching;
  readonly device: DeviceSeen;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
}

function Device({ teaching, device, isOpen, onOpen }: DeviceProps) {
  const [name, setName] = useState(device.name);
  const who = device.pupilIds.map((id) => teaching.labelOf(id)).join(", ");
  const nowMs = teaching.calmServerMs.value;
  const seen = device.hasLeft ? say("TeacherDeviceLeft") : device.seenAt === undefined ? say("TeacherDeviceNotHeard") : say("TeacherDeviceHeard", ago(Date.parse(device.seenAt), nowMs));
  const order = (change: { name?: string; isLocked?: boolean; isFreed?: boolean }) => teaching.orderDevice(device.deviceId, change);
  return (
    <li class="device" data-left={device.hasLeft ? "" : undefined}>
      <button type="button" class="device-head" aria-expanded={isOpen} disabled={device.hasLeft} onClick={onOpen}>
        <span class="device-name">{deviceText(device.name)}</span>
        <span class="device-unsent">{device.unsentCount > 0 && <strong>{say("TeacherUnsentShort", device.unsentCount)}</strong>}</span>
        <span class="device-seen">
          <span class="device-who">{teaching.isOwn(device) ? say("TeacherThisPhone") : who || kindText(device.kind)} · </span>
          {device.isLocked && <strong>{say("TeacherLocked")} · </strong>}
          {seen}
        </span>
      </button>
      {isOpen && (
        <div class="device-orders">
          <Button isOn={device.isLocked} onPress={() => order({ isLocked: !device.isLocked })}>{say(device.isLocked ? "TeacherUnlock" : "TeacherLock")}</Button>
          {device.pupilIds.length > 0 && <Button onPress={() => order({ isFreed: true })}>{say("TeacherFree")}</Button>}
          <form
            class="rename"
            onSubmit={(e) => {
              e.preventDefault();
              if (name.trim() !== "" && name.trim() !== device.name) void order({ name: name.trim() });
            }}
          >
            <input aria-label={say("TeacherDeviceName")} maxLength={40} value={name} onInput={(e) => setName(e.currentTarget.value)} />
            <button type="submit" class="button" disabled={name.trim() === "" || name.trim() === device.name}>{say("TeacherRename")}</button>
          </form>
        </div>
      )}
    </li>
  );
}
