export { LotCompiler } from "./compiler.js";
export { followLot, judgeChange } from "./judgeChange.js";
export type { JudgedLot, JudgeOptions, LotChange } from "./judgement.js";
export * from "./simulate.js";
export * from "./simulation.js";
export { type Trajectory, trajectory } from "./trajectory.js";
export { withEnd } from "./withEnd.js";
