import { classTopics } from "@keepwright/handout";
import { type ClassForm, classMinutes, withTopic } from "../../state/classForm.js";
import { useWords } from "../../words/words.js";
import { Tick } from "../Tick.js";
import { WholeNumberField } from "../WholeNumberField.js";
import { ClassAbout } from "./ClassAbout.js";

interface ClassFormViewProps {
  readonly form: ClassForm;
  readonly onChange: (change: Partial<ClassForm>) => void;
  readonly onMake: () => void;
  readonly tag: string;
  readonly wrongBy: string | undefined;
}

/** What the class is about, how long it is, its topics and its print; then the one button. */
export function ClassFormView({ form, onChange, onMake, tag, wrongBy }: ClassFormViewProps) {
  const say = useWords();
  const none = form.topics.length === 0;
  return (
    <form
      className="class-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (!none) onMake();
      }}
    >
      <p>{say("class.lead")}</p>
      <div className="class-part">
        <ClassAbout form={form} onChange={onChange} tag={tag} wrongBy={wrongBy} />
      </div>
      <div className="class-part">
        <WholeNumberField
          label={say("class.minutes")}
          value={form.minutes}
          range={classMinutes}
          onChange={(minutes) => onChange({ minutes })}
        />
        <fieldset className="class-topics" aria-describedby="class-topics-note">
          <legend>{say("class.topics")}</legend>
          {classTopics.map((topic) => (
            <Tick
              key={topic}
              words={say(`class.topic.${topic}`)}
              ticked={form.topics.includes(topic)}
              onChange={(wanted) => onChange({ topics: withTopic(form.topics, topic, wanted) })}
            />
          ))}
          <p id="class-topics-note" className={none ? "wrong" : "soft"} role={none ? "alert" : undefined}>
            {say(none ? "class.noTopic" : "class.topicsNote")}
          </p>
        </fieldset>
        <Tick words={say("class.large")} ticked={form.large} onChange={(large) => onChange({ large })} />
      </div>
      <button type="submit" className="main-button">
        {say("class.make")}
      </button>
    </form>
  );
}
