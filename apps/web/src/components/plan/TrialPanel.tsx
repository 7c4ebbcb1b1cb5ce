import { type HandoutContext, judgementView, lotNames, placeNames, wholeLotNames } from "@keepwright/handout";
import type { Judgement } from "@keepwright/planner";
import { useEffect, useRef } from "react";
import type { Carried } from "../../behaviour/useCarrying.js";
import type { Moving } from "../../behaviour/useMoving.js";
import type { Chosen } from "../../state/chosenArrangement.js";
import { useWords } from "../../words/words.js";
import { afterDialog } from "../afterDialog.js";

interface TrialPanelProps {
  readonly moving: Moving;
  readonly carried: Carried | undefined;
  readonly context: HandoutContext;
}

/** What is in the hand and over which place; then what leaving it there costs, with a way to keep it and one to put it back. */
export function TrialPanel({ moving, carried, context }: TrialPanelProps) {
  const say = useWords();
  const { trial, judgement, shown } = moving;
  const panel = useRef<HTMLElement>(null);
  const lot = trial?.parts[0];
  useEffect(() => {
    if (lot === undefined) return;
    afterDialog(() => panel.current?.focus({ preventScroll: true }));
    // Where it lies when all is decided: it may have been drawn anew elsewhere meanwhile.
    return () => {
      requestAnimationFrame(() =>
        document.querySelector<HTMLElement>(`[data-move="${lot}"]`)?.focus({ preventScroll: true }),
      );
    };
  }, [lot]);
  if (!trial && !carried) return null;
  const places = placeNames(context, shown.plan);
  const heading = trial
    ? say("trial.heading", {
        name: context.speaker.capital(chosenName(context, moving, trial)),
        place: places.get(trial.at.place) ?? trial.at.place,
      })
    : "";
  return (
    <section
      className="trial"
      ref={panel}
      tabIndex={-1}
      aria-label={trial ? heading : say("carry.label")}
      data-trial={trial ? "" : undefined}
    >
      {trial && <h3>{heading}</h3>}
      <div role="status">
        {carried ? (
          <CarriedWords carried={carried} places={places} names={lotNames(context, shown.plan)} />
        ) : judgement ? (
          <JudgedWords judgement={judgement} lots={[trial?.lot ?? ""]} context={context} />
        ) : moving.problem !== undefined ? (
          <p className="wrong">{say("plan.problem", { problem: moving.problem || say("plan.stopped") })}</p>
        ) : (
          <p>{say("trial.working")}</p>
        )}
      </div>
      {trial && !carried && (
        <p className="trial-buttons">
          <button type="button" onClick={moving.putBack}>
            {say("trial.putBack")}
          </button>
          <button type="button" className="main-button" disabled={!judgement} onClick={moving.keep}>
            {say("trial.keep")}
          </button>
        </p>
      )}
    </section>
  );
}

/** What a person calls what they put elsewhere: the lot, or the one part of it. */
function chosenName(context: HandoutContext, { made }: Moving, { lot, parts }: Chosen): string {
  const all = made.plan.lots.filter((part) => part.lot === lot).length;
  const names = parts.length < all ? lotNames(context, made.plan) : wholeLotNames(context, made.plan);
  return names.get(parts.length < all ? (parts[0] ?? lot) : lot) ?? lot;
}

interface CarriedWordsProps {
  readonly carried: Carried;
  readonly places: ReadonlyMap<string, string>;
  readonly names: ReadonlyMap<string, string>;
}

function CarriedWords({ carried, places, names }: CarriedWordsProps) {
  const say = useWords();
  const name = names.get(carried.part) ?? carried.part;
  const place = carried.over === undefined ? undefined : places.get(carried.over);
  if (place === undefined) return <p>{say("carry.nowhere", { name })}</p>;
  return <p>{say(carried.by === "keys" ? "carry.keys" : "carry.over", { name, place })}</p>;
}

interface JudgedWordsProps {
  readonly judgement: Judgement;
  /** The lots whose lives are told. */
  readonly lots: readonly string[];
  readonly context: HandoutContext;
}

/** What it costs: what is unsafe first, then the lives of what was moved, then waste and the rest beside the plan. */
export function JudgedWords({ judgement, lots, context }: JudgedWordsProps) {
  const told = judgementView(context, {
    ...judgement,
    lots: judgement.lots.filter(({ lot }) => lots.includes(lot)),
    conflicts: [],
  });
  return (
    <>
      {told.unsafe.map((line) => (
        <p key={line} className="wrong">
          {line}
        </p>
      ))}
      <ul>
        {[...told.lots, ...told.cost, ...told.alsoSeen].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}

interface KeptProps {
  readonly moving: Moving;
  readonly context: HandoutContext;
}

/** Says that the plan is no longer the computed one alone, what that costs, and lets the plan decide again, lot by lot. */
export function Kept({ moving, context }: KeptProps) {
  const say = useWords();
  const { kept, judgement, shown, trial } = moving;
  if (kept.length === 0) return null;
  const places = placeNames(context, shown.plan);
  return (
    <section className="kept" aria-labelledby="kept-heading">
      <h3 id="kept-heading">{say("kept.heading")}</h3>
      {judgement && !trial && (
        <JudgedWords judgement={judgement} lots={kept.map(({ lot }) => lot)} context={context} />
      )}
      {!judgement && (
        <p role="status">
          {moving.problem === undefined
            ? say("trial.working")
            : say("plan.problem", { problem: moving.problem || say("plan.stopped") })}
        </p>
      )}
      <p className="kept-buttons">
        {kept.map((one) => (
          <button key={one.key} type="button" onClick={() => moving.release(one.key)}>
            {say("kept.release", {
              name: chosenName(context, moving, one),
              place: places.get(one.at.place) ?? one.at.place,
            })}
          </button>
        ))}
      </p>
    </section>
  );
}
