import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { PutAwayPage } from "./pages/PutAwayPage.js";
import "./styles/page.css";
import "./styles/haul.css";
import "./styles/plan.css";
import "./styles/places.css";

const page = document.getElementById("page");
if (!page) throw new Error("The page has no element #page to draw in.");
createRoot(page).render(
  <StrictMode>
    <PutAwayPage />
  </StrictMode>,
);
