/** The device's own civil day. The clock is read here, at the door, and nowhere further in. */
export function today(now: Date = new Date()): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
