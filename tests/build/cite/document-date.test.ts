import { expect, test } from "vitest";
import { documentDate } from "../../../src/build/cite/document-date.ts";

// document, its day
test.each([
  ["---\ntitle: x\ndate: 1960-03-01\n---\nText", "1960-03-01"],
  ['\uFEFF---\r\nissued: "1960-03-01T10:00"\r\n---\r\n', "1960-03-01"],
  ["---\nPublished : '1960-03-01'\n---\n", "1960-03-01"],
  ['<head><meta content="1960-03-01T08:00Z" property="article:published_time"></head>', "1960-03-01"],
  ["<meta name='date' content='1960-03-01'>", "1960-03-01"],
  ["date: 1960-03-01\n", undefined],
  ["Text\n---\ndate: 1960-03-01\n---\n", undefined],
  ["---\ntitle: x\n---\ndate: 1960-03-01\n", undefined],
  ["---\ndate: March\n---\n", undefined],
  ["<meta name=author content=1960-03-01>", undefined],
  ["", undefined],
])("%j: %s", (text, day) => {
  expect(documentDate(text)).toBe(day);
});
