/**
 * Answers as drawings, each with its table: concordance, timeline, words and witnesses.
 *
 * <p>Read {@link merese.desk.chart.Inquiry} first: what all four ask alike. What is drawn is read
 * by charts.js from the table beside it, so that the two can't disagree.
 */
package merese.desk.chart;
