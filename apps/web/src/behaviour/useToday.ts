import { useEffect, useState } from "react";
import { today } from "../state/today.js";

/** The device's day; looked at again whenever the page comes back into view, for a page left open overnight. */
export function useToday(): string {
  const [day, setDay] = useState(() => today());
  useEffect(() => {
    const look = () => setDay(today());
    document.addEventListener("visibilitychange", look);
    return () => document.removeEventListener("visibilitychange", look);
  }, []);
  return day;
}
