/**
 * Answers as JSON, by data binding, which is loaded here and nowhere else: a question that is not
 * asked for JSON must not wait for it.
 *
 * <p>Read {@link merese.answer.json.AnswerJson}.
 */
package merese.answer.json;
