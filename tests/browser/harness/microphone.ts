/** A microphone before which somebody speaks half a second in every one, once it is allowed. */
export const MICROPHONE = `
  let opened = null, tracks = [];
  window.allowed = false;
  window.mic = {
    get seconds() { return opened ? opened.currentTime : 0; },
    get live() { return tracks.filter((track) => track.readyState === 'live').length; },
  };
  // An empty page has none.
  if (navigator.mediaDevices) navigator.mediaDevices.getUserMedia = async () => {
    if (!allowed) throw new DOMException('', 'NotAllowedError');
    opened = new AudioContext();
    await opened.resume();
    const voice = opened.createOscillator();
    const breath = opened.createGain();
    const out = opened.createMediaStreamDestination();
    breath.gain.value = 0;
    for (let s = 0; s < 15; s += 1) {
      breath.gain.setValueAtTime(0.2, s + 0.3);
      breath.gain.setValueAtTime(0, s + 0.8);
    }
    voice.connect(breath).connect(out);
    voice.start();
    tracks = out.stream.getTracks();
    return out.stream;
  };
`;
