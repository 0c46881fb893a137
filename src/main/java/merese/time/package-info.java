/**
 * Dates and what they span. Read {@link merese.time.Edtf} first: it reads the Extended Date/Time
 * Format of the Library of Congress (4 February 2019; ISO 8601-2:2019) at its levels 0, 1 and 2.
 *
 * <p>A date gives two {@linkplain merese.time.Span spans} of days: the core is its plain reading,
 * the outer one a generous reading, by a {@linkplain merese.time.Circa profile}. What meets only
 * the outer one is borderline. A span runs from the first day that may be meant to the last; dates
 * with gaps (a day in an unknown month) are not taken apart.
 *
 * <p>Dates in words ("late eighteenth century", "Regency") are read by {@link
 * merese.time.DateWords}, by a {@linkplain merese.time.DateProfile profile} that a library may set.
 *
 * <p>The calendar is the Gregorian one, also before 1582, with a year 0. No time zones are reckoned
 * with: the day that is written is the day. May use merese.model; no regular expressions, since
 * answers pass through here.
 */
package merese.time;
