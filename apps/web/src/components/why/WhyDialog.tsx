import { type HandoutContext, lifeViews, lotNames, publishedRuleLines, whyViews } from "@keepwright/handout";
import type { LotReason, PlannedLot } from "@keepwright/planner";
import { useMemo, useState } from "react";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { useProblemWords } from "../../behaviour/useProblemWords.js";
import { useReasons } from "../../behaviour/useReasons.js";
import { curvesOf } from "../../drawing/curves.js";
import { addressOf } from "../../state/route.js";
import { useWords } from "../../words/words.js";
import { useModal } from "../useModal.js";
import { WordList } from "../WordList.js";
import { CourseChart, CourseTable } from "./CourseChart.js";
import { Sources } from "./Sources.js";

interface WhyDialogProps {
  readonly part: string;
  readonly made: MadePlan;
  /** The plan is not the one its reasons were worked out with: the person put something elsewhere. */
  readonly changed: boolean;
  readonly context: HandoutContext;
  readonly onClose: () => void;
}

/** Why a part lies where it lies, over the plan: closing it, or going back, leads to where one was. */
export default function WhyDialog({ part, made, changed, context, onClose }: WhyDialogProps) {
  const say = useWords();
  const modal = useModal(onClose);
  const lot = made.plan.lots.find(({ id }) => id === part);
  const name = context.speaker.capital(lotNames(context, made.plan).get(part) ?? "");
  return (
    <dialog {...modal.props} className="why" aria-labelledby="why-heading">
      <div className="why-head">
        <h2 id="why-heading" tabIndex={-1}>
          {lot ? say("why.heading", { name }) : say("why.gone")}
        </h2>
        <button type="button" onClick={modal.close}>
          {say("why.close")}
        </button>
      </div>
      {lot && <Reasons lot={lot} name={name} made={made} changed={changed} context={context} />}
    </dialog>
  );
}

interface ReasonsProps {
  readonly lot: PlannedLot;
  readonly name: string;
  readonly made: MadePlan;
  readonly changed: boolean;
  readonly context: HandoutContext;
}

function Reasons({ lot, name, made, changed, context }: ReasonsProps) {
  const say = useWords();
  const { plan, asked } = made;
  const [everything, setEverything] = useState(false);
  const all = useReasons({ asked, plan, lot: lot.lot }, everything || changed);
  const problem = useProblemWords(all);
  const reason = (all.reasons ?? made.reasons).find((each) => each.part === lot.id);
  const life = useMemo(
    () => lifeViews(context, plan, lotNames(context, plan)).find((each) => each.lot === lot.id),
    [context, plan, lot.id],
  );
  const why = useMemo(
    () => reason && whyViews(context, plan, [sourcelessRules(reason)], true)[0],
    [context, plan, reason],
  );
  return (
    <>
      {why ? (
        <p className="why-here">{why.line}</p>
      ) : (
        <p role="status">{all.problem === undefined ? say("why.working") : ""}</p>
      )}
      {problem !== undefined && (
        <p role="alert" className="wrong">
          {say("why.problem", { problem: problem || say("plan.stopped") })}
        </p>
      )}
      <div className="why-columns">
        <div>
          {life && <WordList heading={say("why.ends")} lines={[...life.reasons, life.lookByLine]} />}
          {why && <WordList heading={say("why.neighbours")} lines={why.neighbours} />}
        </div>
        {reason && <CourseOf lot={lot} name={name} reason={reason} context={context} />}
      </div>
      {why && (
        <div className="why-columns">
          <WordList heading={say("why.elsewhere")} lines={why.elsewhere} />
          <WordList heading={say("why.otherwise")} lines={[...why.wraps, ...why.rules]} />
        </div>
      )}
      {why && !all.reasons && (
        <button
          type="button"
          disabled={everything && all.problem === undefined}
          onClick={() => setEverything(true)}
        >
          {everything && all.problem === undefined ? say("why.working") : say("why.everywhere")}
        </button>
      )}
      <WhereFrom commodity={lot.commodity} plan={plan} reason={reason} context={context} />
      <p>
        <a className="why-link" href={addressOf("ask", lot.commodity)}>
          {say("why.ask")}
        </a>
      </p>
    </>
  );
}

interface WhereFromProps extends Pick<ReasonsProps, "context"> {
  readonly commodity: string;
  readonly plan: MadePlan["plan"];
  readonly reason: LotReason | undefined;
}

/** Where the figures come from, and before them the rules that a publication stands behind. */
function WhereFrom({ commodity, plan, reason, context }: WhereFromProps) {
  return (
    <Sources
      key={reason ? "with rules" : "without"}
      commodity={commodity}
      context={context}
      heading={context.speaker.say("heading.sources")}
      {...(reason && { more: (sourced: HandoutContext) => publishedRuleLines(sourced, plan, reason) })}
    />
  );
}

/**
 * The page plans without the provenance of figures, so a rule that a publication stands behind comes without its name: such rules are
 * told with the sources below, and not as if nobody had written of them.
 */
const sourcelessRules = (reason: LotReason): LotReason => ({
  ...reason,
  ruledOut: reason.ruledOut.filter(({ evidence }) => evidence === undefined),
});

function CourseOf({
  lot,
  name,
  reason,
  context,
}: Omit<ReasonsProps, "made" | "changed"> & { readonly reason: LotReason }) {
  const say = useWords();
  const commodity = context.catalogue.commodities.get(lot.commodity);
  const { course } = reason.here;
  if (!course || !commodity) return null;
  const curves = curvesOf({
    course,
    mostWater: commodity.water.maximumLoss.value / 100,
    ripens: commodity.ripening !== undefined && lot.form !== "cut",
  });
  return (
    <section className="words">
      <h3>{say("why.course")}</h3>
      <CourseChart name={name} curves={curves} lot={lot} />
      <p className="small soft">{say("why.courseNote")}</p>
      <CourseTable course={course} curves={curves} lot={lot} />
    </section>
  );
}
