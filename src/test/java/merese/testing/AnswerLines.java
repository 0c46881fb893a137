package merese.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import merese.answer.Coverage;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.Section;

/** A whole answer as lines, so that a test compares all of it and not a part. */
public final class AnswerLines {
  private final List<String> lines = new ArrayList<>();

  private AnswerLines() {}

  public static String of(Coverage answer) {
    AnswerLines lines = new AnswerLines();
    answer.ask().ifPresent(ask -> lines.add("asks: " + ask.reason()));
    answer.sections().forEach(lines::section);
    lines.entries("meaning not stated", answer.meaningNotStated());
    answer
        .checked()
        .forEach(
            c ->
                lines.add(
                    "checked: "
                        + c.source().reference()
                        + " "
                        + c.checks().stream()
                            .map(
                                k ->
                                    k.extent().map(e -> e + " ").orElse("")
                                        + k.method()
                                        + ", "
                                        + k.result())
                            .collect(Collectors.joining("; "))));
    answer
        .notChecked()
        .forEach(
            n ->
                lines.add(
                    "not checked: "
                        + n.source().reference()
                        + n.remark().map(r -> " (" + r + ")").orElse("")));
    answer
        .leftOut()
        .forEach(
            l ->
                lines.add(
                    "left out, "
                        + l.because()
                        + ": "
                        + l.sources().stream()
                            .map(s -> s.reference())
                            .collect(Collectors.joining("; "))));
    if (!answer.nearTerms().isEmpty()) {
      lines.add("near: " + String.join("; ", answer.nearTerms()));
    }
    return String.join("\n", lines.lines) + "\n";
  }

  private void section(Section section) {
    add(
        section.letter().map(l -> l + " ").orElse("")
            + section.heading().id()
            + " “"
            + section.heading().label()
            + "”"
            + (section.heading().myTerm() ? " my term" : "")
            + ": "
            + section.count()
            + " of "
            + section.works());
    section
        .groups()
        .forEach(
            g ->
                entries(
                    g.group().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                    g.entries()));
    section
        .words()
        .forEach(
            w ->
                add(
                    "word: “"
                        + w.word()
                        + "” also "
                        + w.others().stream()
                            .map(
                                o ->
                                    o.concept().id()
                                        + (o.references().isEmpty() ? "" : " " + o.references()))
                            .collect(Collectors.joining(", "))));
    section
        .howToTell()
        .forEach(
            h ->
                add(
                    "tell: "
                        + h.concept().id()
                        + " / "
                        + h.other().id()
                        + (h.statedUnder().equals(h.concept()) ? "" : ", said there")
                        + h.test().map(t -> ": " + t).orElse("")));
    section
        .ownPieces()
        .forEach(p -> add("piece: " + p.ref() + " " + p.kind() + " " + p.concept().id()));
    section.experience().forEach(e -> add("experience: " + e.words()));
  }

  private void entries(String group, List<Entry> entries) {
    for (Entry entry : entries) {
      String passages =
          entry.passages().stream().map(AnswerLines::passage).collect(Collectors.joining(" | "));
      add(group + ": " + entry.source().reference() + ", " + passages);
      entry
          .conflicts()
          .forEach(
              c ->
                  add(
                      "  ⚠ caption “"
                          + c.caption()
                          + "” against "
                          + c.text()
                              .map(t -> "text " + t + " “" + c.words().orElse("") + "”")
                              .orElse("my reading")));
      entry.readings().forEach(r -> add("  reading: " + r));
      entry.claims().forEach(c -> add("  claims: " + c));
      entry
          .sameAs()
          .forEach(s -> add("  " + s.here() + " = " + s.otherReference() + ", " + s.there()));
    }
  }

  private static String passage(Passage passage) {
    String places =
        passage.pictured().isEmpty()
            ? joined(passage.inWords()) + " in words"
            : joined(passage.pictured())
                + (passage.inWords().isEmpty() ? "" : " (text " + joined(passage.inWords()) + ")");
    return places
        + " “"
        + String.join("”, “", passage.printed())
        + "”"
        + passage.concept().map(ConceptLine::id).map(id -> " → " + id).orElse("")
        + (passage.narrower() ? " narrower" : "");
  }

  private static String joined(List<?> values) {
    return values.stream().map(Object::toString).collect(Collectors.joining("; "));
  }

  private void add(String line) {
    lines.add(line);
  }
}
