package merese.change.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.exchange.identifier.Identifiers;
import merese.model.Check;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Identifier;
import merese.model.Work;
import merese.model.WorkLink;
import merese.store.Stored;

/** What is likely to be wrong in what a work says of itself, its editions and their copies. */
final class WorkSlips {
  private final Findings findings;

  WorkSlips(Findings findings) {
    this.findings = findings;
  }

  void look(Stored<Work> file) {
    Work work = file.value();
    links(file);
    titles(file);
    numbers(file);
    for (Edition edition : work.editions()) {
      edition.imprint().identifiers().forEach(number -> identifier(file, edition, number));
      copies(file, edition);
      checks(file, edition);
      years(file, edition);
    }
  }

  private void links(Stored<Work> file) {
    Work work = file.value();
    Set<WorkLink> seen = new HashSet<>();
    for (WorkLink link : work.links()) {
      if (link.to().equals(work.id())) {
        findings.warn(
            file,
            Position.of(file.content(), "links", link.to()),
            "links",
            "the work links to itself (" + link.kind().code() + ")",
            "name the other work, or take the link away");
      } else if (!seen.add(link)) {
        findings.warn(
            file,
            Position.of(file.content(), "links", link.to(), link.to()),
            "links",
            "the link " + link.kind().code() + " " + link.to() + " stands there twice",
            "keep one of them; merese check --fix does it");
      }
    }
  }

  private void titles(Stored<Work> file) {
    Set<String> seen = new HashSet<>();
    for (String title : file.value().alternateTitles()) {
      if (!seen.add(title)) {
        findings.warn(
            file,
            Position.of(file.content(), "alternateTitles", title, title),
            "alternateTitles",
            "\"" + title + "\" stands there twice",
            "keep one of them; merese check --fix does it");
      }
    }
  }

  /** Of translations and the like, and of reprints, the numbers are counted anew. */
  private void numbers(Stored<Work> file) {
    List<Edition> counted = new ArrayList<>();
    for (Edition edition : file.value().editions()) {
      boolean own =
          edition.lineage().isEmpty() || edition.lineage().get().form() == Lineage.Form.REVISED;
      if (own && edition.imprint().number().isPresent() && edition.imprint().year().isPresent()) {
        counted.add(edition);
      }
    }
    counted.sort(Comparator.comparingInt(e -> e.imprint().year().getAsInt()));
    for (int i = 1; i < counted.size(); i++) {
      Edition before = counted.get(i - 1);
      Edition edition = counted.get(i);
      int year = edition.imprint().year().getAsInt();
      int number = edition.imprint().number().getAsInt();
      if (year > before.imprint().year().getAsInt()
          && number < before.imprint().number().getAsInt()) {
        findings.warn(
            file,
            Position.inEdition(file.content(), edition.key()),
            edition.key(),
            "edition "
                + number
                + " of "
                + year
                + " comes after edition "
                + before.imprint().number().getAsInt()
                + " of "
                + before.imprint().year().getAsInt()
                + " ("
                + before.key()
                + ")",
            "correct \"number\" or \"year\" of one of the two");
      }
    }
  }

  private void identifier(Stored<Work> file, Edition edition, Identifier number) {
    Optional<String> fault = number.wrongInPrint() ? Optional.empty() : Identifiers.fault(number);
    fault.ifPresent(
        wrong ->
            findings.warn(
                file,
                Position.inEdition(file.content(), edition.key(), number.value()),
                edition.key(),
                wrong,
                "correct it from the source; if the source prints it so, add"
                    + " \"wrongInPrint\": true"));
  }

  /** Two copies may stand on one shelf; two that are alike in all that is said may be one. */
  private void copies(Stored<Work> file, Edition edition) {
    Map<List<Object>, String> seen = new HashMap<>();
    for (Copy copy : edition.copies()) {
      List<Object> said =
          List.of(copy.holder(), copy.shelfMark(), copy.lentTo(), copy.missing(), copy.remark());
      String before = seen.putIfAbsent(said, copy.id());
      if (before != null && copy.shelfMark().isPresent()) {
        findings.warn(
            file,
            Position.inEdition(file.content(), edition.key(), "copies", copy.id()),
            edition.key() + ", " + copy.id(),
            "the copies "
                + before
                + " and "
                + copy.id()
                + " are alike, both at "
                + copy.shelfMark().get(),
            "if there is one copy, remove the other: merese remove "
                + edition.key()
                + " --copy "
                + copy.id());
      }
    }
  }

  private void checks(Stored<Work> file, Edition edition) {
    Set<Check> seen = new HashSet<>();
    Optional<ArticlePages> article = ArticlePages.of(edition);
    for (Check check : edition.checks()) {
      Position at = Position.inEdition(file.content(), edition.key(), "checks", check.concept());
      if (!seen.add(check)) {
        findings.warn(
            file,
            at,
            edition.key() + ", checks",
            "the check for " + check.concept() + " stands there twice, word for word",
            "keep one of them; merese check --fix does it");
      }
      Optional<String> outside = article.flatMap(pages -> check.extent().flatMap(pages::outside));
      if (outside.isPresent()) {
        findings.warn(
            file,
            at,
            edition.key() + ", checks",
            "\"" + check.extent().get() + "\" " + outside.get(),
            "correct the one or the other");
      }
    }
  }

  private void years(Stored<Work> file, Edition edition) {
    boolean early =
        edition.imprint().year().isPresent()
            && edition.lineage().isPresent()
            && edition.lineage().get().originalYear().isPresent()
            && edition.imprint().year().getAsInt()
                < edition.lineage().get().originalYear().getAsInt();
    if (early) {
      findings.warn(
          file,
          Position.inEdition(file.content(), edition.key(), "lineage", "originalYear"),
          edition.key(),
          "it is of "
              + edition.imprint().year().getAsInt()
              + ", before what it repeats was first published, in "
              + edition.lineage().get().originalYear().getAsInt(),
          "correct \"year\" or \"originalYear\"");
    }
  }
}
