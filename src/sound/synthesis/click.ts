/** A dry wooden knock; the accent is higher. */
export function clickSound(accent: boolean, sampleRate: number): Float32Array {
  const samples = new Float32Array(Math.round(0.12 * sampleRate));
  const base = accent ? 2350 : 1650;
  const partials = [
    { frequency: base, strength: 1, decay: 0.018 },
    { frequency: base * 1.52, strength: 0.45, decay: 0.009 },
    { frequency: base * 2.63, strength: 0.2, decay: 0.004 },
  ];
  const attack = 0.0003 * sampleRate;
  const total = partials.reduce((sum, partial) => sum + partial.strength, 0);
  for (let index = 0; index < samples.length; index += 1) {
    const time = index / sampleRate;
    let sum = 0;
    for (const { frequency, strength, decay } of partials) {
      sum += strength * Math.exp(-time / decay) * Math.sin(2 * Math.PI * frequency * time);
    }
    samples[index] = (sum / total) * Math.min(1, (index + 1) / attack);
  }
  return samples;
}
