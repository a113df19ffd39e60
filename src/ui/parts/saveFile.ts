/** Hands a file to the person, as a download. */
export function saveFile(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers read the address only after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
