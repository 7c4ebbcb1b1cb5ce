/**
 * Stands in for the schema library on the page itself, where nothing is checked by a schema: what the person enters is
 * checked again by the planner in the worker, which has the real one. Building a schema does nothing here; using one is
 * a mistake and says so.
 */
const checks = ["parse", "safeParse", "parseAsync", "safeParseAsync"];

const anything: unknown = new Proxy(() => anything, {
  apply: () => anything,
  get: (_, name) => {
    if (checks.includes(String(name)))
      throw new Error(`Schemas are not in the page: ask the worker instead of calling ${String(name)}.`);
    return anything;
  },
});

export const z = anything;
