/** The call to pour: two notes like a lid set down on a bowl, and a buzz. Only after the person asked for it. */

let audio: AudioContext | null = null;

/**
 * Must be called from a touch or a key: browsers let nothing sound before. `told` hears whether it can sound now, and
 * again whenever that changes: a telephone takes the sound away for a call, and Safari also while its screen is locked.
 */
export async function wakeBell(told: (isAwake: boolean) => void): Promise<void> {
  const tell = (): void => told(audio?.state === 'running');
  if (audio === null) {
    audio = new AudioContext();
    audio.addEventListener('statechange', tell);
  }
  await audio.resume();
  tell();
}

/** Common practice, no source: two partials of a small bowl, soft enough for a kitchen. */
const notes = [
  { hertz: 880, afterS: 0 },
  { hertz: 1318, afterS: 0.18 },
];

/** Sets the bell for an instant of this device's clock; the sound card keeps it even when the page is hidden. */
export function setBell(atDeviceMs: number): () => void {
  const context = audio;
  if (context === null || context.state !== 'running') return () => undefined;
  const begin = context.currentTime + Math.max(0, atDeviceMs - Date.now()) / 1000;
  const sounding = notes.map(({ hertz, afterS }) => strike(context, hertz, begin + afterS));
  return () => sounding.forEach((note) => note.stop());
}

function strike(context: AudioContext, hertz: number, at: number): OscillatorNode {
  const note = new OscillatorNode(context, { frequency: hertz });
  const loudness = new GainNode(context, { gain: 0 });
  loudness.gain.setValueAtTime(0, at);
  loudness.gain.linearRampToValueAtTime(0.5, at + 0.01);
  loudness.gain.exponentialRampToValueAtTime(0.001, at + 1.6);
  note.connect(loudness).connect(context.destination);
  note.start(at);
  note.stop(at + 1.7);
  return note;
}

/** Two short buzzes, in milliseconds; nothing happens where there is no motor. */
export function buzz(): void {
  if ('vibrate' in navigator) navigator.vibrate([220, 120, 220]);
}
