import { randomBytes } from 'node:crypto';
import { request } from 'node:http';
import type { Duplex } from 'node:stream';

/** What goes over a WebSocket of plain text. */
export interface TextSocket {
  send(text: string): void;
  close(): void;
}

const TEXT = 1;
const CLOSE = 8;
const PING = 9;
const PONG = 10;

/** Connects to a WebSocket of this machine (RFC 6455), for text alone: Node 20 brings no client of its own. */
export function connectSocket(address: string, onText: (text: string) => void): Promise<TextSocket> {
  const { hostname, port, pathname } = new URL(address);
  const asked = request({
    hostname,
    port,
    path: pathname,
    headers: {
      connection: 'Upgrade',
      upgrade: 'websocket',
      'sec-websocket-version': '13',
      'sec-websocket-key': randomBytes(16).toString('base64'),
    },
  });
  return new Promise((resolve, reject) => {
    asked.on('error', reject);
    asked.on('response', ({ statusCode }) => reject(new Error(`${address} answered ${statusCode}.`)));
    asked.on('upgrade', (_, stream: Duplex, head: Buffer) => {
      listen(stream, head, onText);
      resolve({
        send: (text) => stream.write(frame(TEXT, Buffer.from(text))),
        close: () => {
          stream.write(frame(CLOSE, Buffer.alloc(0)));
          stream.end();
        },
      });
    });
    asked.end();
  });
}

/** A frame as a client sends it: whole, and masked. */
function frame(kind: number, payload: Buffer): Buffer {
  const { length } = payload;
  const head = Buffer.concat([Buffer.from([0x80 | kind]), lengthOf(length)]);
  const mask = randomBytes(4);
  return Buffer.concat([head, mask, payload.map((byte, index) => byte ^ (mask[index % 4] ?? 0))]);
}

/** A length in as few bytes as it takes, which the standard demands. */
function lengthOf(length: number): Buffer {
  if (length < 126) return Buffer.from([0x80 | length]);
  const bytes = Buffer.alloc(length < 65_536 ? 3 : 9);
  bytes.writeUInt8(0x80 | (length < 65_536 ? 126 : 127));
  if (length < 65_536) bytes.writeUInt16BE(length, 1);
  else bytes.writeBigUInt64BE(BigInt(length), 1);
  return bytes;
}

/** Puts the frames of a server together; one message may come in several. */
function listen(stream: Duplex, head: Buffer, onText: (text: string) => void): void {
  let waiting = head;
  let parts: Buffer[] = [];
  const read = (): void => {
    for (let found = firstFrame(waiting); found !== null; found = firstFrame(waiting)) {
      waiting = waiting.subarray(found.end);
      if (found.kind === PING) stream.write(frame(PONG, found.payload));
      if (found.kind >= CLOSE) continue;
      parts.push(found.payload);
      if (!found.last) continue;
      const text = Buffer.concat(parts).toString('utf8');
      parts = [];
      onText(text);
    }
  };
  stream.on('data', (bytes: Buffer) => {
    waiting = Buffer.concat([waiting, bytes]);
    read();
  });
  // A browser that is ended resets its connection.
  stream.on('error', () => stream.destroy());
  read();
}

function firstFrame(bytes: Buffer) {
  if (bytes.length < 2) return null;
  const short = bytes.readUInt8(1) & 0x7f;
  const start = short === 126 ? 4 : short === 127 ? 10 : 2;
  if (bytes.length < start) return null;
  const length =
    short === 126 ? bytes.readUInt16BE(2) : short === 127 ? Number(bytes.readBigUInt64BE(2)) : short;
  const end = start + length;
  if (bytes.length < end) return null;
  const first = bytes.readUInt8(0);
  return { last: (first & 0x80) !== 0, kind: first & 0x0f, payload: bytes.subarray(start, end), end };
}
