/** The kinds of files that are written: how their names end, and their media types. */
export const FILE_KINDS = {
  lesson: { ending: '.lesson.json', type: 'application/json' },
  handout: { ending: '.pdf', type: 'application/pdf' },
  practice: { ending: '.practice.html', type: 'text/html;charset=utf-8' },
  musicXml: { ending: '.musicxml', type: 'application/vnd.recordare.musicxml+xml' },
  mxl: { ending: '.mxl', type: 'application/vnd.recordare.musicxml' },
  textTab: { ending: '.txt', type: 'text/plain;charset=utf-8' },
  midi: { ending: '.mid', type: 'audio/midi' },
  wav: { ending: '.wav', type: 'audio/wav' },
  m4a: { ending: '.m4a', type: 'audio/mp4' },
  mp3: { ending: '.mp3', type: 'audio/mpeg' },
  opus: { ending: '.opus', type: 'audio/ogg' },
  webm: { ending: '.webm', type: 'video/webm' },
  mp4: { ending: '.mp4', type: 'video/mp4' },
  zip: { ending: '.zip', type: 'application/zip' },
  svg: { ending: '.svg', type: 'image/svg+xml' },
  png: { ending: '.png', type: 'image/png' },
} as const;

export type FileKind = keyof typeof FILE_KINDS;
