import { SeamgrainError } from '../../core/errors.js';

const step = 0x8000;

/** Bytes as base64 text (RFC 4648, section 4). */
export function toBase64(bytes: ArrayBuffer): string {
  const all = new Uint8Array(bytes);
  let binary = '';
  for (let at = 0; at < all.length; at += step) {
    binary += String.fromCharCode(...all.subarray(at, at + step));
  }
  return btoa(binary);
}

/** The bytes again. @throws SeamgrainError when the text is no base64 */
export function fromBase64(text: string): ArrayBuffer {
  let binary: string;
  try {
    binary = atob(text);
  } catch {
    throw new SeamgrainError('cannotDo', 'A photo in the file is damaged, so nothing was opened.');
  }
  const bytes = new Uint8Array(binary.length);
  for (let at = 0; at < binary.length; at++) bytes[at] = binary.charCodeAt(at);
  return bytes.buffer;
}
