/** Empty, so that Eleventy does not take the configuration of the project. */
export default function () {}
