/** Hands a file to the browser's downloads. */
export function saveToDisk(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name.replace(/[\\/:*?"<>|]+/g, ' ').trim();
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
