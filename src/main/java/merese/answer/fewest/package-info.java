/**
 * The fewest sources that cover or picture a number of features. Read {@link
 * merese.answer.fewest.Fewest} first: it makes a set covering problem of the notes, has it solved
 * to proved optimality, and ranks what is equally few by rule R6.
 *
 * <p>{@code CoverSolver} is the only class that knows the solver, ojAlgo. Nothing greedy is ever
 * called fewest: a greedy cover only tells the solver where to start.
 */
package merese.answer.fewest;
