let sound: AudioContext | undefined;

/** A short tone, where the browser makes sound at all; called within a tap the first time, or it stays silent. */
export function beep(frequencyHz: number, lengthS: number): void {
  if (typeof AudioContext === "undefined") return;
  sound ??= new AudioContext();
  void sound.resume();
  const [tone, loudness] = [sound.createOscillator(), sound.createGain()];
  const from = sound.currentTime;
  tone.frequency.value = frequencyHz;
  // A quick rise and fall, that it does not click.
  loudness.gain.setValueAtTime(0, from);
  loudness.gain.linearRampToValueAtTime(0.5, from + 0.01);
  loudness.gain.setValueAtTime(0.5, from + lengthS - 0.03);
  loudness.gain.linearRampToValueAtTime(0, from + lengthS);
  tone.connect(loudness).connect(sound.destination);
  tone.start(from);
  tone.stop(from + lengthS);
}
