import { useState } from "preact/hooks";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { SheetTop } from "./SheetTop";
import type { Teaching } from "./teaching";

/** A look around: how many are not with the task. By counting, or by tapping tiles; only the number is kept, never who. */
export function ScanSheet({ teaching }: { readonly teaching: Teaching }) {
  const [offCount, setOffCount] = useState(0);
  const [tapped, setTapped] = useState<ReadonlySet<string>>(new Set());
  const presentCount = teaching.presentCount.value;
  const present = teaching.floor.bundle.value.pupils.filter((p) => !teaching.absent.value.has(p.pupilId));
  const off = Math.min(offCount, presentCount);
  const step = (by: number) => {
    setTapped(new Set());
    setOffCount(Math.min(presentCount, Math.max(0, off + by)));
  };
  const tap = (id: string) => {
    const next = new Set(tapped);
    if (!next.delete(id)) next.add(id);
    setTapped(next);
    setOffCount(next.size);
  };
  const save = async () => {
    const fact = { kind: "engagementScan", engagedCount: presentCount - off, presentCount } as const;
    if (await teaching.write(say("TeacherSaidScan", presentCount - off, presentCount), [[{}, fact]])) history.back();
  };
  return (
    <div class="sheet">
      <SheetTop title={say("TeacherScan")} step="scan" />
      <div class="sheet-body">
        <p>{say("TeacherScanHow")}</p>
        <div class="counter">
          <Button isLarge mark="minus" label={say("TeacherFewer")} isDisabled={off === 0} onPress={() => step(-1)} />
          <p class="counter-number" role="status">
            <strong class="numbers">{off}</strong>
            <span>{say("TeacherScanOff")}</span>
          </p>
          <Button isLarge mark="plus" label={say("TeacherMore")} isDisabled={off >= presentCount} onPress={() => step(1)} />
        </div>
        <div class="tiles small-tiles" role="group" aria-label={say("TeacherScanTap")}>
          {present.map((p) => (
            <button key={p.pupilId} type="button" class="tile" aria-pressed={tapped.has(p.pupilId)} onClick={() => tap(p.pupilId)}>
              <span class="tile-name">{p.label}</span>
            </button>
          ))}
        </div>
        <p class="small muted">{say("TeacherScanKept")}</p>
      </div>
      <div class="pad">
        <Button kind="main" isDisabled={presentCount === 0} onPress={save}>{say("TeacherScanSave", presentCount - off, presentCount)}</Button>
      </div>
    </div>
  );
}
