import { type AirChanges, noChanges } from "./airChanges.js";
import { DayAirRecorder } from "./dayAir.js";
import { Estimator } from "./estimate.js";
import { AirRecorder, Replay } from "./replay.js";
import { type RunSpace, runSpace } from "./run.js";
import { type LotRoom, lotRoom } from "./runningLot.js";
import type { Background } from "./settleAir.js";
import type { Trajectory } from "./trajectory.js";
import { emptyBackground } from "./without.js";

/** Room for judging changes to one trajectory, used again for each: thousands are judged, and making it anew would cost as much as judging. */
export interface Workspace {
  readonly space: RunSpace;
  readonly background: Background;
  readonly air: AirRecorder;
  readonly replay: Replay;
  readonly changes: AirChanges;
  readonly estimator: Estimator;
  /** Room for the lots that are followed, by number. */
  readonly room: (index: number) => LotRoom;
}

const workspaces = new WeakMap<Trajectory, Workspace>();

/** The workspace of a trajectory. It holds nothing between two judgements that either could see. */
export function workspaceOf(base: Trajectory): Workspace {
  const known = workspaces.get(base);
  if (known) return known;
  const { tree, grid, steps } = base.inner;
  const means = new DayAirRecorder(tree, grid);
  const air = new AirRecorder(tree, means);
  const rooms: LotRoom[] = [];
  const made: Workspace = {
    space: runSpace(tree),
    background: emptyBackground(steps, tree),
    air,
    replay: new Replay(tree, air),
    changes: noChanges(means),
    estimator: new Estimator(base),
    room: (index) => {
      rooms[index] ??= lotRoom();
      return rooms[index];
    },
  };
  workspaces.set(base, made);
  return made;
}
