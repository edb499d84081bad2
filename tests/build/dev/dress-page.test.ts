import { expect, test } from "vitest";
import { alone, dressPage } from "../../../src/build/dev/dress-page.ts";

const PAGE = "<html><head><title>a</title></head><body><p>b</p></body></html>";

test("a page gets its complaints and the files that show them, all of them from the same server", () => {
  const dressed = dressPage(PAGE, "1-2", "<p>$& and $1</p>");
  expect(dressed).toContain('<div id="yearmark-dev" data-edition="1-2"><p>$& and $1</p></div>');
  expect([...dressed.matchAll(/(?:src|href)="([^"]*)"/g)].map(([, address]) => address)).toEqual([
    "/.yearmark/on-page.css",
    "/.yearmark/on-page.js",
  ]);
  expect(dressed).not.toMatch(/<script[^>]*>[^<]|<style| style=/);
});

test("before there is a site a page can be dressed as well", () => {
  expect(dressPage(alone("No site", "Mend it."), "1-0", "<p>what is wrong</p>")).toContain("<p>what is wrong</p>");
});
