export { plainPage as render } from "../../plain-page.ts";
