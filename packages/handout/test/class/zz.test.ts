import { writeFileSync } from "node:fs";
import { catalogue } from "@keepwright/catalogue";
import { makeKit, classTopics, type ClassRequest } from "@keepwright/handout";
import { it } from "vitest";
import { englishGrade, spanishEase } from "/tmp/wt/class/scripts/lib/readingLevel.mjs";
import { documentSentences } from "/tmp/wt/class/packages/handout/test/class/documentSentences.js";
it("x", () => {
  const items="apple banana carrot spinach tomato potato onion strawberry garlic cucumber cabbage orange avocado cantaloupe beet basil".split(" ");
  for (const language of ["en","es"] as const) {
    const r: ClassRequest={version:1,audience:{language,print:"ordinary",paper:"a4",units:"metric"},items,household:{kitchen:"ordinary",people:4,portions:5,days:7},minutes:60,topics:[...classTopics],seed:1};
    const t=Date.now(); const kit=makeKit(r,catalogue()); console.log(language, Date.now()-t,"ms");
    for (const d of kit.documents) { const s=documentSentences(d); console.log(d.id,(language==="en"?englishGrade(s):spanishEase(s)).toFixed(2));
      if (process.env.SHOW===d.id || process.env.SHOW==="bad") for (const x of s) { const v=language==="en"?englishGrade([x]):spanishEase([x]); if (process.env.SHOW!=="bad"|| (language==="en"?v>7.5:v<62)) console.log("   ",v.toFixed(1),x);} }
  }
});
