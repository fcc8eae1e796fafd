import { language } from "../words/say";

/** The part of the browser's speech recognition that is used; not every browser has it, and types for it are not in the standard library. */
interface Recognition {
  lang: string;
  continuous: boolean;
  onresult: ((event: { readonly resultIndex: number; readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }>> }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  stop(): void;
}

/** Whether this browser listens at all. What it hears may go to its maker, so nothing starts before the teacher has agreed. */
export function canDictate(): boolean {
  return maker() !== undefined;
}

/** Listens until it is stopped or falls silent. Answers how to stop it. */
export function dictate(onHeard: (text: string) => void, onEnd: () => void): () => void {
  const Maker = maker();
  if (!Maker) return () => undefined;
  const recognition = new Maker();
  recognition.lang = language.value === "es" ? "es-ES" : "en-GB";
  recognition.continuous = true;
  recognition.onresult = (event) => {
    for (let i = event.resultIndex; i < event.results.length; i++) onHeard(event.results[i]?.[0]?.transcript.trim() ?? "");
  };
  recognition.onend = onEnd;
  recognition.start();
  return () => recognition.stop();
}

function maker(): (new () => Recognition) | undefined {
  const there = globalThis as { SpeechRecognition?: new () => Recognition; webkitSpeechRecognition?: new () => Recognition };
  return there.SpeechRecognition ?? there.webkitSpeechRecognition;
}
