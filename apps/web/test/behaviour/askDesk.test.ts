import { ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { answerAsk } from "../../src/behaviour/answerAsk.js";
import { askDesk } from "../../src/behaviour/askDesk.js";
import type { AskRequest, KindAsked } from "../../src/behaviour/askMessages.js";
import type { WorkerPart } from "../../src/behaviour/workerPart.js";

const kitchen = ordinaryKitchens.ordinary;
const asked = (id: string): KindAsked => ({ id, kitchen, form: "whole" });

/** Workers that answer only when they are told to. */
function standIn() {
  const workers: (WorkerPart & { readonly posted: AskRequest[]; ended: boolean })[] = [];
  const start = () => {
    const own = {
      posted: [] as AskRequest[],
      ended: false,
      onmessage: null,
      onerror: null,
      postMessage: (request: AskRequest) => own.posted.push(request),
      terminate: () => {
        own.ended = true;
      },
    };
    workers.push(own as never);
    return own as never;
  };
  const answer = (worker: (typeof workers)[number], request: AskRequest) =>
    worker.onmessage?.call(worker as never, { data: answerAsk(request) } as MessageEvent);
  return { workers, start, answer };
}

describe("questions about a kind", () => {
  it("go to one worker, once each, and what it answered is kept", () => {
    const { workers, start, answer } = standIn();
    const desk = askDesk(start);
    let heard = 0;
    desk.ask(asked("carrot"), () => heard++);
    desk.ask(asked("carrot"), () => heard++);
    desk.ask(asked("beet"), () => heard++);
    expect(workers).toHaveLength(1);
    expect(workers[0]!.posted).toHaveLength(2);
    expect(desk.known(asked("carrot"))).toBeUndefined();
    answer(workers[0]!, workers[0]!.posted[0]!);
    expect(heard).toBe(2);
    const known = desk.known(asked("carrot"));
    expect(known?.kind === "asked" && known.answer.commodity).toBe("carrot");
    desk.ask(asked("carrot"), () => heard++);
    expect(workers[0]!.posted).toHaveLength(2);
  });

  it("a worker that breaks is told of, and the next question gets a new one", () => {
    const { workers, start, answer } = standIn();
    const desk = askDesk(start);
    desk.ask(asked("carrot"), () => undefined);
    workers[0]!.onerror?.call(workers[0] as never, { message: "out of memory" } as ErrorEvent);
    expect(desk.known(asked("carrot"))).toMatchObject({ kind: "problem", message: "out of memory" });
    expect(workers[0]!.ended).toBe(true);
    desk.ask(asked("carrot"), () => undefined);
    expect(workers).toHaveLength(2);
    answer(workers[1]!, workers[1]!.posted[0]!);
    expect(desk.known(asked("carrot"))?.kind).toBe("asked");
  });

  it("a kind that there is none of is answered with what is wrong, by its name", () => {
    const answer = answerAsk({ kind: "ask", asked: JSON.stringify(asked("zorbulon")) });
    expect(answer).toMatchObject({ kind: "problem" });
    expect(answer.kind === "problem" && answer.message).toContain("zorbulon");
  });
});
