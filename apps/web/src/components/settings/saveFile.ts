/** Hands a text to the browser to keep as a file. Nothing is sent anywhere. */
export function saveFile(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has to have begun before the address goes.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
