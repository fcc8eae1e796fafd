import { signal } from "@preact/signals";

const voices = signal<readonly SpeechSynthesisVoice[]>([]);
const speech = typeof window === "undefined" ? undefined : window.speechSynthesis;
if (speech) {
  const read = () => void (voices.value = speech.getVoices());
  read();
  speech.addEventListener?.("voiceschanged", read);
}

/** Whether this device has a voice for a language. */
export function canSpeak(language: string): boolean {
  return voices.value.some((v) => v.lang.toLowerCase().startsWith(language));
}

/** Reads aloud, in place of what is being read. */
export function speak(texts: readonly string[], language: string): void {
  if (!speech) return;
  speech.cancel();
  for (const text of texts) {
    const utterance = new SpeechSynthesisUtterance(text);
    const voice = voices.value.find((v) => v.lang.toLowerCase().startsWith(language));
    if (voice) utterance.voice = voice;
    utterance.lang = voice?.lang ?? language;
    utterance.rate = 0.9;
    speech.speak(utterance);
  }
}

/** Stops reading: another page has come. */
export function hush(): void {
  speech?.cancel();
}
