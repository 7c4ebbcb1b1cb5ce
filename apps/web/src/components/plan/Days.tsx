import type { EatingView } from "@keepwright/handout";

interface EatingDaysProps {
  readonly heading: string;
  readonly eating: EatingView;
}

/** The days on which something is to be eaten or nobody is at home; what ripens and what is left stand apart. */
export function EatingDays({ heading, eating }: EatingDaysProps) {
  const days = eating.days.filter((day) => day.away || day.entries.length > 0);
  return (
    <section className="words">
      <h3>{heading}</h3>
      <ol className="days">
        {days.map((day) => (
          <li key={day.date}>
            {day.entries.length === 0 ? (
              <p>{day.line}</p>
            ) : (
              <>
                <p className="day-name">{day.dateWords}</p>
                <ul className="day-entries">
                  {day.entries.map((entry) => (
                    <li key={entry}>{entry}</li>
                  ))}
                </ul>
              </>
            )}
          </li>
        ))}
      </ol>
      <Lines lines={eating.cutOpen} />
      <Lines lines={eating.ready} />
      <Lines lines={eating.left} />
    </section>
  );
}

function Lines({ lines }: { readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <ul className="soft">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
