/** The kinds of files that are written: how their names end, and their media types. */
export const FILE_KINDS = {
  lesson: { ending: '.lesson.json', type: 'application/json' },
  handout: { ending: '.pdf', type: 'application/pdf' },
  practice: { ending: '.practice.html', type: 'text/html;charset=utf-8' },
  musicXml: { ending: '.musicxml', type: 'application/vnd.recordare.musicxml+xml' },
  mxl: { ending: '.mxl', type: 'application/vnd.recordare.musicxml' },
  textTab: { ending: '.txt', type: 'text/plain;charset=utf-8' },
  midi: { ending: '.mid', type: 'audio/midi' },
  audio: { ending: '.wav', type: 'audio/wav' },
  svg: { ending: '.svg', type: 'image/svg+xml' },
  png: { ending: '.png', type: 'image/png' },
} as const;

export type FileKind = keyof typeof FILE_KINDS;
