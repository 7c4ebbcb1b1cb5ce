import type { EatingEffect, EthyleneInjuryConstants, TemperatureTable } from "./parts.js";

/**
 * One kind of produce as plain numbers: what the relations need, taken from its catalogue record by `produceFromCommodity`.
 * Units are in the names or beside them; nothing here is looked up again during a simulation.
 */
export interface Produce {
  readonly id: string;
  /** Respiration [mg CO2/(kg h)] against temperature [°C]; middle of the published range at each temperature. */
  readonly respiration: TemperatureTable;
  /** Temperature [°C] at which `storageLifeDays` was published, and that life's geometric middle [d]. */
  readonly storageTemperature: number;
  readonly storageLifeDays: number;
  /** Standard deviation of ln(life) from the published range (low and high taken as 10 % and 90 %). */
  readonly lifeSpread: number;
  readonly freezingPoint: number;
  /** Ethylene production [µL/(kg h)] against temperature, unripe and ripe (equal where the kind does not ripen). */
  readonly ethyleneUnripe: TemperatureTable;
  readonly ethyleneRipe: TemperatureTable;
  /** Share of life (at the reference concentration) lost per tenfold ethylene. */
  readonly ethyleneSlope: number;
  readonly ethyleneInjuries: readonly EthyleneInjuryConstants[];
  /** Transpiration coefficient [kg/(kg s Pa)], bare, and with leaves left on. */
  readonly transpiration: number;
  readonly transpirationWithTops: number;
  /** Loss of initial mass [fraction] at which it is no longer good. */
  readonly maximumLoss: number;
  readonly chilling?:
    | {
        readonly threshold: number;
        readonly thresholdWhenRipe: number;
        /** Temperature [°C] and days at which injury was published; more than one may be given. */
        readonly injury: TemperatureTable;
      }
    | undefined;
  readonly ripening?:
    | {
        readonly daysAt20: number;
        readonly minimum: number;
        readonly maximum: number;
        readonly ripeLifeDays: number;
        readonly ripeLifeTemperature: number;
        /** Share of the time to ripen (at the reference concentration) saved per tenfold ethylene. */
        readonly ethyleneSlope: number;
        readonly arrives: number;
      }
    | undefined;
  /** Decay hazard class as a factor, and whether soft. */
  readonly decayFactor: number;
  readonly soft: boolean;
  /** Relative humidity (0…1) above which a kind stored dry rots faster; absent in kinds stored humid. */
  readonly dryAbove?: number | undefined;
  /** Days to sprout [d] against temperature; empty when the kind does not sprout. */
  readonly sprouting: TemperatureTable;
  readonly greensInLightDays?: number | undefined;
  readonly eatingEffects: readonly EatingEffect[];
  readonly cutLifeDaysAt5: number;
  readonly timeTemperatureControl: boolean;
  /** Under that control as it is sold, not only once it is cut. */
  readonly controlledAsSold?: true | undefined;
}

/** One of a kind that ripens. */
export type RipeningProduce = Produce & { readonly ripening: NonNullable<Produce["ripening"]> };

export const isRipening = (produce: Produce): produce is RipeningProduce => produce.ripening !== undefined;

/**
 * A kind's constants with another loss of water at which it is no longer good. Written out without a spread, as every maker of a `Produce` is: objects that share one hidden
 * class are read many times as fast in the stepper.
 */
export const produceWithLoss = (produce: Produce, maximumLoss: number): Produce => ({
  id: produce.id,
  respiration: produce.respiration,
  storageTemperature: produce.storageTemperature,
  storageLifeDays: produce.storageLifeDays,
  lifeSpread: produce.lifeSpread,
  freezingPoint: produce.freezingPoint,
  ethyleneUnripe: produce.ethyleneUnripe,
  ethyleneRipe: produce.ethyleneRipe,
  ethyleneSlope: produce.ethyleneSlope,
  ethyleneInjuries: produce.ethyleneInjuries,
  transpiration: produce.transpiration,
  transpirationWithTops: produce.transpirationWithTops,
  maximumLoss,
  chilling: produce.chilling,
  ripening: produce.ripening,
  decayFactor: produce.decayFactor,
  soft: produce.soft,
  dryAbove: produce.dryAbove,
  sprouting: produce.sprouting,
  greensInLightDays: produce.greensInLightDays,
  eatingEffects: produce.eatingEffects,
  cutLifeDaysAt5: produce.cutLifeDaysAt5,
  timeTemperatureControl: produce.timeTemperatureControl,
  controlledAsSold: produce.controlledAsSold,
});
