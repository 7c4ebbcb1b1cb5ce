/** The page's own thread between two marks, by the browser's trace: how long its tasks had the processor [ms], which other work on the machine does not lengthen much. */
export async function traced(browser, act) {
  const session = await browser.newBrowserCDPSession();
  const events = [];
  session.on("Tracing.dataCollected", ({ value }) => events.push(...value));
  const includedCategories = ["toplevel", "blink.user_timing"];
  await session.send("Tracing.start", {
    transferMode: "ReportEvents",
    traceConfig: { includedCategories, excludedCategories: ["*"] },
  });
  const result = await act();
  const complete = new Promise((resolve) => session.once("Tracing.tracingComplete", resolve));
  await session.send("Tracing.end");
  await complete;
  await session.detach();
  return { result, events };
}

/** Tasks of the thread that set a mark, outermost only, begun between it and another mark, the longest first [ms of processor time]. */
export function tasksBetween(events, from, to) {
  const mark = (name) => events.find((event) => event.name === name && event.cat.includes("user_timing"));
  const [begin, end] = [mark(from), mark(to)];
  const own = events
    .filter(({ pid, tid, ph }) => pid === begin.pid && tid === begin.tid && ph === "X")
    .sort((one, other) => one.ts - other.ts || other.dur - one.dur);
  const tasks = [];
  let until = 0;
  for (const { ts, dur, tdur = 0 } of own) {
    if (ts < until) continue;
    until = ts + dur;
    if (ts >= begin.ts && ts < end.ts) tasks.push(tdur / 1000);
  }
  return tasks.sort((one, other) => other - one);
}
