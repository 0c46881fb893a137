package merese.cli;

import java.util.List;
import merese.model.DateWord;
import merese.time.DateProfile;

/** Shows the rules by which dates in words become years. */
final class DateProfileText {
  private static final String INDENT = "    ";
  private static final int EXAMPLE = 1700;

  private final Page page;

  DateProfileText(Page page) {
    this.page = page;
  }

  void print(DateProfile profile) {
    int first = EXAMPLE + profile.centuryFirstYear();
    int beyond = profile.yearsBeyondEnd();
    page.blank();
    page.heading("Date profile “" + profile.name() + "”");
    page.text(
        "The plain years count; the outer ones are generous, and what only they reach is"
            + " borderline.");
    page.blank();
    row("about 1790", 1790, 1790, 1790 - profile.circa().years(), 1790 + profile.circa().years());
    page.columns(INDENT, "about a month, a day", widest(profile))
        .line(
            "± "
                + Page.many(profile.circa().months(), "month")
                + ", ± "
                + Page.many(profile.circa().days(), "day"));
    row("1830s", 1830, 1839, 1830, 1839);
    row("18th century", first, first + 99, first, first + 99 + beyond);
    row("first half of it", first, first + 49, first, first + 49 + beyond);
    row("last quarter of it", first + 75, first + 99, first + 75, first + 99 + beyond);
    for (DateWord part : profile.parts()) {
      row(
          part.word() + " 18th century",
          first + part.from(),
          first + part.to(),
          first + part.earliest(),
          first + part.latest());
    }
    page.columns(INDENT, "before 1780", widest(profile)).line("up to 1779");
    page.columns(INDENT, "after 1780", widest(profile)).line("from 1781, no end");
    page.blank();
    page.heading("Period words");
    for (DateWord period : profile.periods()) {
      row(period.word(), period.from(), period.to(), period.earliest(), period.latest());
    }
    page.blank();
    page.text("There is no agreed rule. To set your own, write in library.json what differs:");
    for (String line :
        List.of(
            "\"dateProfile\": {",
            "  \"circaYears\": 10,",
            "  \"centuryFirstYear\": 1,",
            "  \"yearsBeyondEnd\": 0,",
            "  \"parts\": [",
            "    { \"word\": \"early\",",
            "      \"from\": 0, \"to\": 24 } ],",
            "  \"periods\": [",
            "    { \"word\": \"Regency\",",
            "      \"from\": 1811, \"to\": 1820,",
            "      \"outerFrom\": 1800,",
            "      \"outerTo\": 1830 } ]",
            "}")) {
      page.text(Wrap.together(INDENT + line));
    }
  }

  private static int widest(DateProfile profile) {
    int wide = Wrap.columns("about a month, a day");
    for (DateWord period : profile.periods()) {
      wide = Math.max(wide, Wrap.columns(period.word()));
    }
    return Math.min(wide, 26);
  }

  private void row(String words, int from, int to, int outerFrom, int outerTo) {
    String core = from == to ? String.valueOf(from) : from + "–" + to;
    boolean same = from == outerFrom && to == outerTo;
    page.columns(INDENT, words, 20)
        .line(core + (same ? "" : ", " + Wrap.together("outer " + outerFrom + "–" + outerTo)));
  }
}
