/** Hands a text or bytes to the browser to keep as a file. Nothing is sent anywhere. */
export function saveFile(
  name: string,
  content: string | Uint8Array<ArrayBuffer>,
  type = "application/json",
): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has to have begun before the address goes.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
