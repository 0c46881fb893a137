package merese.change.records;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.identifier.Identifiers;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Identifier;
import merese.model.ReceivedRecord;
import merese.model.Work;
import merese.shelf.Fingerprint;

/**
 * A source beside a record of it: what is missing is filled in, what differs stays unless the user
 * wants it replaced, and the record is kept with the source.
 *
 * @param work the source's work with that one edition, as it would be
 */
record Comparison(Work work, List<Difference> differences) {
  /** Lists, of which what both say is kept. */
  private static final Set<Aspect> GROWING = Set.of(Aspect.IDENTIFIERS, Aspect.OTHER_TITLES);

  /**
   * @param ours with one edition
   * @param theirs with one edition
   */
  static Comparison of(Work ours, Work theirs, boolean replace) {
    Work now = ours;
    List<Difference> differences = new ArrayList<>();
    for (Aspect part : Aspect.values()) {
      Work wanted = wanted(part, ours, theirs);
      if (part.isSilent(theirs) || isAlike(part, ours, wanted)) {
        continue;
      }
      boolean adds = part.isSilent(ours) || GROWING.contains(part);
      boolean taken = adds || replace;
      differences.add(new Difference(part, part.printed(ours), part.printed(theirs), taken));
      if (taken) {
        now = part.taken(now, wanted);
      }
    }
    return new Comparison(withRecord(now, theirs.editions().get(0).received().get(0)), differences);
  }

  /** The record; where a list grows, what both say. */
  private static Work wanted(Aspect part, Work ours, Work theirs) {
    return switch (part) {
      case IDENTIFIERS -> withIdentifiers(ours, theirs);
      case OTHER_TITLES -> withOtherTitles(ours, theirs);
      default -> theirs;
    };
  }

  /** Whether the library says it already, in other words or with more. */
  private static boolean isAlike(Aspect part, Work ours, Work wanted) {
    return switch (part) {
      case KIND -> true; // a guess of the file's type of record, so one that is set stays
      case PEOPLE -> new HashSet<>(people(ours)).containsAll(people(wanted));
      case STATEMENT -> isSameEdition(imprint(ours), imprint(wanted));
      default -> part.isSame(ours, wanted) || isWordedAlike(part, ours, wanted);
    };
  }

  private static List<String> people(Work work) {
    return work.contributors().stream()
        .map(c -> c.role().code() + " " + Fingerprint.folded(c.name().full()))
        .toList();
  }

  private static boolean isSameEdition(Imprint ours, Imprint theirs) {
    return ours.number().isPresent() && theirs.number().isPresent()
        ? ours.number().equals(theirs.number())
        : Fingerprint.folded(ours.statement().orElse(""))
            .equals(Fingerprint.folded(theirs.statement().orElse("")));
  }

  private static Imprint imprint(Work work) {
    return work.editions().get(0).imprint();
  }

  private static boolean isWordedAlike(Aspect part, Work ours, Work wanted) {
    String words = Fingerprint.folded(part.printed(ours));
    return words.equals(Fingerprint.folded(part.printed(wanted)));
  }

  private static Work withIdentifiers(Work ours, Work theirs) {
    Edition edition = ours.editions().get(0);
    List<Identifier> all = new ArrayList<>(edition.imprint().identifiers());
    for (Identifier identifier : theirs.editions().get(0).imprint().identifiers()) {
      if (all.stream().noneMatch(i -> Identifiers.isSame(i, identifier))) {
        all.add(identifier);
      }
    }
    return ours.withOnly(edition.withImprint(edition.imprint().withIdentifiers(all)));
  }

  private static Work withOtherTitles(Work ours, Work theirs) {
    List<String> all = new ArrayList<>(ours.alternateTitles());
    for (String title : theirs.alternateTitles()) {
      String folded = Fingerprint.folded(title);
      boolean known =
          folded.equals(Fingerprint.folded(ours.title()))
              || all.stream().anyMatch(t -> Fingerprint.folded(t).equals(folded));
      if (!known) {
        all.add(title);
      }
    }
    return ours.withAlternateTitles(all);
  }

  /** A newer record takes the place of the one with its name. */
  private static Work withRecord(Work work, ReceivedRecord record) {
    Edition edition = work.editions().get(0);
    List<ReceivedRecord> records = new ArrayList<>();
    boolean placed = false;
    for (ReceivedRecord old : edition.received()) {
      boolean same = old.format().equals(record.format()) && old.id().equals(record.id());
      if (!same) {
        records.add(old);
      } else if (!placed) {
        records.add(record);
        placed = true;
      }
    }
    if (!placed) {
      records.add(record);
    }
    return work.withOnly(edition.withReceived(records));
  }
}
