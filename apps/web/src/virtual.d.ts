declare module "virtual:worked-example" {
  const hauls: Readonly<Record<"en" | "es", string>>;
  export default hauls;
}
