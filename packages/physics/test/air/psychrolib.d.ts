declare module "psychrolib" {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(celsius: number): number;
    GetTDewPointFromVapPres(celsius: number, pascals: number): number;
    GetHumRatioFromVapPres(pascals: number, pressure: number): number;
    GetRelHumFromVapPres(celsius: number, pascals: number): number;
    GetVaporPressureDeficit(celsius: number, humidityRatio: number, pressure: number): number;
  };
  export default psychrolib;
}
