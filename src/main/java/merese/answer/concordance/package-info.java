/**
 * Which source calls what by which word, and how far they agree.
 *
 * <p>Read {@link merese.answer.concordance.Concording} first, then {@link
 * merese.answer.concordance.Concordance}, which holds the whole answer. {@link
 * merese.answer.concordance.Alpha} is Krippendorff's measure of agreement.
 */
package merese.answer.concordance;
