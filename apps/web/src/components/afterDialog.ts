/** Does it once no dialog lies over the page: until then nothing below can have the focus, and the dialog gives it back to what opened it. */
export function afterDialog(act: () => void): void {
  const open = document.querySelector<HTMLDialogElement>("dialog:modal");
  if (open) open.addEventListener("close", act, { once: true });
  else act();
}
