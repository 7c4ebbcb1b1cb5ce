import { classRegions } from "@keepwright/handout";
import { type ClassForm, classKinds } from "../../state/classForm.js";
import { useWords } from "../../words/words.js";
import { Segments } from "../unpack/Segments.js";
import { WholeNumberField } from "../WholeNumberField.js";

interface ClassAboutProps {
  readonly form: ClassForm;
  readonly onChange: (change: Partial<ClassForm>) => void;
  /** BCP 47 tag by which months are named. */
  readonly tag: string;
  /** Id of what is wrong with it, where something is. */
  readonly wrongBy: string | undefined;
}

/** What a class is about: kinds that are named, or those in season. What is entered for the one stays while the other is looked at. */
export function ClassAbout(props: ClassAboutProps) {
  const say = useWords();
  const { form, onChange, wrongBy } = props;
  return (
    <>
      <Segments
        legend={say("class.about")}
        options={(["list", "season"] as const).map((value) => ({
          value,
          words: say(`class.about.${value}`),
        }))}
        chosen={form.about}
        onChoose={(about) => onChange({ about })}
      />
      {form.about === "season" ? (
        <Season {...props} />
      ) : (
        <>
          <label htmlFor="class-kinds">{say("class.kinds")}</label>
          <textarea
            id="class-kinds"
            rows={8}
            value={form.kinds}
            aria-invalid={wrongBy !== undefined}
            aria-describedby={wrongBy}
            onChange={({ target }) => onChange({ kinds: target.value })}
          />
        </>
      )}
    </>
  );
}

function Season({ form, onChange, tag }: ClassAboutProps) {
  const say = useWords();
  const months = Array.from({ length: 12 }, (_, index) =>
    new Date(2001, index, 1).toLocaleDateString(tag, { month: "long" }),
  );
  return (
    <div className="class-season">
      <div className="fields">
        <label className="field">
          <span>{say("class.month")}</span>
          <select value={form.month} onChange={({ target }) => onChange({ month: Number(target.value) })}>
            {months.map((name, index) => (
              <option key={name} value={index + 1}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>{say("class.region")}</span>
          <select
            value={form.region}
            onChange={({ target }) => {
              const region = classRegions.find((one) => one === target.value);
              if (region) onChange({ region });
            }}
          >
            {classRegions.map((region) => (
              <option key={region} value={region}>
                {say(`class.region.${region}`)}
              </option>
            ))}
          </select>
        </label>
        <WholeNumberField
          label={say("class.count")}
          value={form.count}
          range={classKinds}
          onChange={(count) => onChange({ count })}
        />
      </div>
      <p className="soft">{say("class.seasonNote")}</p>
    </div>
  );
}
