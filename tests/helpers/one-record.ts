/** The tiny folder with its big record written anew: just the statements that a test is about. */
import type { Knowledge } from "../../src/engine/answers/knowledge.ts";
import { tinyKnowledge } from "./tiny-knowledge.ts";

/** `facts` are lines of the front matter below the kinds, such as "built: […]". */
export function knowledgeOf(facts: string, scope = "all"): Knowledge {
  return tinyKnowledge({
    "changes/1959/HY59-01.md": `---
id: HY59-01
title: Longer hydraulic pump
issued: 1959-02-01
kinds: [part]
components: [pump]
starts: start of 1957
scope: ${scope}
${facts}
---

Story.
`,
  });
}
