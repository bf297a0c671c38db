import { describe, expect, test } from 'vitest';
import { encodingOf } from '#shared-calc/read/text-encoding.ts';

const list = 'Réf.;Désignation;Prix\r\nV 07;Verre 4 mm;12,50 €\r\n';

function bytesIn(text: string, encoding: 'utf8' | 'utf16le' | 'latin1'): Uint8Array {
  return new Uint8Array(Buffer.from(text, encoding));
}

function bigEndian(text: string): Uint8Array {
  return new Uint8Array(Buffer.from(text, 'utf16le').swap16());
}

function readBack(bytes: Uint8Array): string {
  const encoding = encodingOf(bytes);
  return encoding.ok ? new TextDecoder(encoding.value).decode(bytes) : encoding.fault.kind;
}

describe('encodingOf', () => {
  test.each([
    ['UTF-8', bytesIn(list, 'utf8'), list],
    ['UTF-8 with a mark', bytesIn(`\ufeff${list}`, 'utf8'), list],
    ['UTF-16, little end first, with a mark', bytesIn(`\ufeff${list}`, 'utf16le'), list],
    ['UTF-16, little end first', bytesIn(list, 'utf16le'), list],
    ['UTF-16, big end first, with a mark', bigEndian(`\ufeff${list}`), list],
    ['UTF-16, big end first', bigEndian(list), list],
    ['Latin-1', bytesIn(list.replace('€', 'F'), 'latin1'), list.replace('€', 'F')],
    ['Windows-1252', Uint8Array.of(0x31, 0x32, 0x20, 0x80), '12 €'],
    ['a text with an old mark of its end', bytesIn('a;b\r\n\u001a', 'utf8'), 'a;b\r\n\u001a'],
  ])('%s is read as it was written', (_, bytes, text) => {
    expect(readBack(bytes)).toBe(text);
  });

  test.each([
    ['nothing', () => new Uint8Array(), 'empty-file'],
    ['a packed sheet', () => Uint8Array.of(0x50, 0x4b, 0x03, 0x04, 0x14, 0, 6, 0, 8, 0), 'not-text'],
    ['a text with NUL in it', () => bytesIn('a;b\r\nc;\0\r\n', 'utf8'), 'not-text'],
    ['20 megabytes and a byte', () => new Uint8Array(20_000_001), 'file-too-big'],
  ])('%s is refused', (_, bytes, kind) => {
    expect(encodingOf(bytes())).toMatchObject({ ok: false, fault: { kind } });
  });
});
