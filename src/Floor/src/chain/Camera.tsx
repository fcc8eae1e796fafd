import { useEffect, useRef } from "preact/hooks";
import { say } from "../words/say";
import { scanner } from "./scanner";

const betweenLooksMs = 120;

/** The phone's camera, looking for codes as long as it is on the screen. */
export function Camera({ onCode, onFailure }: { readonly onCode: (text: string) => void; readonly onFailure: () => void }) {
  const view = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    let isGone = false;
    let stream: MediaStream | undefined;
    const look = async () => {
      // On plain http there is no camera for pages; pictures taken with the phone's own camera are read instead.
      if (!navigator.mediaDevices) throw new Error("no camera");
      stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment", width: { ideal: 1280 } } });
      const video = view.current;
      if (isGone || !video) return;
      video.srcObject = stream;
      await video.play();
      const scan = await scanner();
      while (!isGone) {
        if (video.videoWidth > 0) for (const text of await scan(video, video.videoWidth, video.videoHeight)) onCode(text);
        await new Promise((done) => setTimeout(done, betweenLooksMs));
      }
    };
    look()
      .catch(() => isGone || onFailure())
      .finally(() => isGone && stop());
    const stop = () => stream?.getTracks().forEach((track) => track.stop());
    return () => {
      isGone = true;
      stop();
    };
  }, []);
  return <video ref={view} class="camera" muted playsInline aria-label={say("SyncChainCamera")} />;
}
