import type { Lot } from "../../problem/lot.js";
import type { ChangesFor, CheckedRequest } from "../triedChange.js";

/** Leaves that draw on the root: on other kinds "with leaves" means nothing to the model. */
const hasTops = ({ catalogue }: CheckedRequest, { tops, form, commodity }: Lot): boolean =>
  tops && form === "whole" && catalogue.commodities.get(commodity)?.water.transpirationWithTops !== undefined;

/** Every bunch that came with its leaves has them taken off before it comes home. */
export const bunchesTopped: ChangesFor = (request) => {
  const bunches = request.haul.lots.filter((lot) => hasTops(request, lot));
  if (bunches.length === 0) return [];
  const lots = request.haul.lots.map((lot) => (bunches.includes(lot) ? { ...lot, tops: false } : lot));
  return [
    {
      change: { name: "bunches topped", lots: bunches.map(({ id }) => id) },
      request: { ...request, haul: { lots } },
    },
  ];
};
