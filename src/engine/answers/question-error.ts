/** A question that cannot be understood. Its message says what was expected. */
export class QuestionError extends Error {}
