/**
 * Milliseconds that the processor has worked for this process, its collections and compilations among them: on a machine
 * that has other work as well, the clock tells how busy that is.
 */
export function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
