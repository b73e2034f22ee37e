/** What makes a line sound is fetched with the sound: the first look does without it. */
export const fetchPerformance = async () => {
  const [performance, { lineSheet }, { createReadiness }] = await Promise.all([
    import('../../../core/performance'),
    import('./line-sheet'),
    import('./ready'),
  ]);
  return { ...performance, lineSheet, createReadiness };
};

export type PerformanceRoom = Awaited<ReturnType<typeof fetchPerformance>>;
