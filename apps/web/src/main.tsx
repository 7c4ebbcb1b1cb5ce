import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App.js";
import { keepOnDevice } from "./offline/newerVersion.js";
import "./styles/page.css";
import "./styles/haul.css";
import "./styles/plan.css";
import "./styles/days.css";
import "./styles/lives.css";
import "./styles/places.css";
import "./styles/drawing.css";
import "./styles/folded.css";
import "./styles/moving.css";
import "./styles/kitchen.css";
import "./styles/why.css";
import "./styles/mine.css";
import "./styles/ask.css";
import "./styles/askWide.css";
import "./styles/settings.css";
import "./styles/narrow.css";
import "./styles/print.css";

const page = document.getElementById("page");
if (!page) throw new Error("The page has no element #page to draw in.");
createRoot(page).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
// After everything the first screen needs: keeping the whole page takes its share of the connection.
if (import.meta.env.PROD) addEventListener("load", () => void keepOnDevice());
