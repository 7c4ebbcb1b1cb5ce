declare module "virtual:worked-example" {
  const haul: string;
  export default haul;
}
