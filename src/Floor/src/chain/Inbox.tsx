import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { KeptFloor } from "../keep/keptFloor";
import { Problem, problemText } from "../sync/problem";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { Camera } from "./Camera";
import { ChainInbox } from "./chainInbox";
import { scanner } from "./scanner";

/** Where the teacher's phone takes in entries of a device without a network. They go to the server with its own, under the name of that device. */
export function Inbox({ floor }: { readonly floor: KeptFloor }) {
  const inbox = useMemo(() => new ChainInbox((entries) => floor.takeIn(entries)), [floor]);
  const isLooking = useSignal(false);
  const problem = useSignal<unknown>(undefined);
  const guarded = async (work: () => Promise<unknown>) => {
    problem.value = undefined;
    try {
      await work();
    } catch (failure) {
      problem.value = failure;
    }
  };
  const files = (input: HTMLInputElement, take: (file: File) => Promise<unknown>) => {
    const chosen = [...(input.files ?? [])];
    input.value = "";
    void guarded(async () => {
      for (const file of chosen) await take(file);
    });
  };
  const { readCount, totalCount, last } = inbox.progress.value;
  return (
    <div class="inbox stack-s">
      <p class="muted">{say("SyncChainReadHow")}</p>
      {problem.value !== undefined && <Banner kind="problem" isNews>{problemText(problem.value)}</Banner>}
      {isLooking.value && (
        <Camera
          onCode={(text) => void guarded(() => inbox.take(text))}
          onFailure={() => {
            isLooking.value = false;
            problem.value = new Problem("noCamera");
          }}
        />
      )}
      <p role="status" class="numbers">
        {last && totalCount > 0
          ? say("SyncChainDone", totalCount, last.entryCount, last.newCount)
          : last
            ? say("SyncFileRead", last.entryCount, last.newCount)
            : totalCount > 0 ? say("SyncChainReadCount", readCount, totalCount) : ""}
      </p>
      <div class="row">
        <Button isOn={isLooking.value} onPress={() => void (isLooking.value = !isLooking.value)}>{say("SyncChainCamera")}</Button>
        <label class="button file-field">
          {say("SyncChainPicture")}
          <input type="file" class="unseen" accept="image/*" multiple onChange={(e) => files(e.currentTarget, (file) => inbox.takePicture(file, scanner))} />
        </label>
        <label class="button file-field">
          {say("SyncFileOpen")}
          <input type="file" class="unseen" accept=".jsonl,.json,.ndjson,text/plain" onChange={(e) => files(e.currentTarget, async (file) => inbox.takeText(await file.text()))} />
        </label>
      </div>
    </div>
  );
}
