package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.ConceptLine;
import merese.answer.rights.Rights;
import merese.answer.rights.Rights.Grouped;
import merese.answer.rights.Rights.Layer;
import merese.answer.rights.Rights.Picture;
import merese.answer.rights.Rights.Printing;
import merese.answer.rights.Rights.Said;
import merese.answer.rights.Rights.Section;
import merese.answer.rights.Rights.Standing;

/** Lays out what is noted of the rights in pictures. */
final class RightsText {
  private static final String INDENT = "    ";
  private static final int LABELS = 10;

  private final Page page;

  RightsText(Page page) {
    this.page = page;
  }

  void print(Rights answer) {
    for (Section section : answer.sections()) {
      section(section);
    }
    page.blank();
    answer.cautions().forEach(page::text);
  }

  private void section(Section section) {
    page.blank();
    page.heading(
        section
            .heading()
            .map(EntryText::label)
            .orElseGet(() -> section.source().map(s -> s.reference() + ", " + s.title()).get()));
    page.text(count(section));
    for (Grouped grouped : section.groups()) {
      page.blank();
      page.heading(title(grouped.standing()));
      for (Picture picture : grouped.pictures()) {
        if (grouped.standing() == Standing.NOT_NOTED) {
          notNoted(picture);
        } else {
          picture(picture);
        }
      }
    }
  }

  private static String count(Section section) {
    String at = Page.given(" at ", section.at(), "");
    if (section.pictures() == 0) {
      return "No note says that it is pictured" + at + ".";
    }
    String places = Page.many(section.pictures(), "picture") + at;
    return section.source().isPresent()
        ? places + "."
        : places + ", in " + Page.many(section.sources(), "source") + ".";
  }

  private static String title(Standing standing) {
    return switch (standing) {
      case REFUSED -> "Refused";
      case MAY_BE_SHOWN_AS_NOTED -> "All three layers are settled, as noted: keep to the terms";
      case ASK_FIRST -> "Something is noted, not enough: ask first";
      case NOTED_IN_WORDS -> "Noted in words only: read them, and ask";
      case NOT_NOTED -> "Nothing is noted: ask first (credit lines composed)";
    };
  }

  private void notNoted(Picture picture) {
    picture.id().ifPresent(this::samePicture);
    for (Printing printing : picture.printings()) {
      notNoted(picture.id().isPresent() ? INDENT : "  ", printing);
    }
  }

  private void samePicture(String id) {
    page.hanging("  ", "The same picture (" + id + ") in:");
  }

  /** The composed credit line names the source and the place, and says all that is known. */
  private void notNoted(String indent, Printing printing) {
    List<String> more = new ArrayList<>();
    printing.owner().known().ifPresent(more::add);
    more.addAll(shown(printing));
    page.hanging(
        indent,
        Labels.together(printing.credit().words())
            + (more.isEmpty() ? "" : " [" + String.join("; ", more) + "]"));
  }

  private void picture(Picture picture) {
    picture.id().ifPresent(this::samePicture);
    for (Printing printing : picture.printings()) {
      page.hanging(
          "  ",
          Wrap.together(printing.source().reference())
              + ", "
              + ClaimRows.locators(printing.where())
              + bracketed(shown(printing)));
      layer("book", printing.book());
      layer(printing.drawn() ? "drawing" : "photograph", printing.photograph());
      layer("owner", printing.owner());
      for (String words : printing.words()) {
        line("as noted", "“" + words + "”");
      }
      line(
          "credit",
          Labels.together(printing.credit().words())
              + (printing.credit().composed() ? " (composed)" : " (as asked)"));
      if (!printing.noted().isEmpty()) {
        line("noted by", String.join("; ", printing.noted()));
      }
    }
  }

  private static List<String> shown(Printing printing) {
    List<String> shown = new ArrayList<>();
    if (printing.mine()) {
      shown.add("my own work");
    }
    if (printing.process()) {
      shown.add("shows how it is made");
    }
    List<String> labels = new ArrayList<>();
    for (ConceptLine concept : printing.narrower()) {
      labels.add(concept.label());
    }
    if (!labels.isEmpty()) {
      shown.add("narrower: " + String.join(", ", labels));
    }
    return shown;
  }

  private static String bracketed(List<String> words) {
    return words.isEmpty() ? "" : " (" + String.join("; ", words) + ")";
  }

  private void layer(String label, Layer layer) {
    String known = layer.known().map(k -> " [" + k + "]").orElse("");
    if (layer.said().isEmpty()) {
      line(label, "not noted" + known);
    }
    for (Said said : layer.said()) {
      line(label, words(said) + known);
    }
  }

  private void line(String label, String text) {
    page.columns(INDENT, label, LABELS).line(text);
  }

  /** As in "Osmere Museum: permission given; £20 for print (letter, 2024-02-03)". */
  private static String words(Said said) {
    List<String> what = new ArrayList<>();
    what.add(said.status().map(s -> s.words()).orElse("status not noted"));
    said.terms().ifPresent(what::add);
    List<String> from = new ArrayList<>();
    said.by().ifPresent(from::add);
    said.on().ifPresent(from::add);
    return Page.given("", said.holder(), ": ")
        + String.join("; ", what)
        + (from.isEmpty() ? "" : " (" + String.join(", ", from) + ")");
  }
}
