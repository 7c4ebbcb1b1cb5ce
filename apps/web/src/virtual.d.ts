declare module "virtual:worked-example" {
  const hauls: Readonly<Record<"en" | "es", string>>;
  export default hauls;
}
declare module "virtual:paper-files" {
  /** Packed by gzip, each by its name: addresses relative to the page's own. */
  export const paperFiles: Readonly<Record<"program" | "Andika-Regular.ttf" | "Andika-Bold.ttf", string>>;
  /** Bytes of all of them together, as they come over the network. */
  export const paperBytes: number;
}
