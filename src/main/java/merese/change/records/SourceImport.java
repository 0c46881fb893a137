package merese.change.records;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import merese.change.records.KnownSources.Known;
import merese.change.records.KnownSources.Name;
import merese.change.records.Matcher.Match;
import merese.change.records.Proposals.Proposed;
import merese.exchange.FilePlace;
import merese.exchange.Incoming;
import merese.exchange.Receiver;
import merese.exchange.Refused;
import merese.exchange.Wrapping;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Edition.OwnTitle;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.ShortReference;
import merese.model.Work;
import merese.shelf.Fingerprint;
import merese.store.ChangeSet;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Stored;

/**
 * Takes the records of files, one file after the other, and decides what each is to a library.
 *
 * <p>Guarantees: nothing is written before {@link #apply}, which writes all of it or nothing; a
 * source that is there is never joined with another, and what it says is never replaced, unless the
 * user has said so; a second import of the same file changes nothing.
 */
public final class SourceImport implements Receiver {
  /** Of a long record, this much is searched for the titles of other works; in characters. */
  private static final int SEARCHED = 20_000;

  private final LibraryFolder folder;
  private final ImportOptions options;
  private final boolean toApply;
  private final KnownSources known = new KnownSources();
  private final Matcher matcher = new Matcher(known);
  private final Map<String, Draft> drafts = new LinkedHashMap<>();
  private final List<Item> items = new ArrayList<>();
  private final List<Refused> refused = new ArrayList<>();
  private final List<ReceivedRecord> kept = new ArrayList<>();
  private final List<Rejected> rejected = new ArrayList<>();

  /** Which of {@link #kept} this import has met: two records of one name are two, not one anew. */
  private final BitSet keptMet = new BitSet();

  private final Stored<List<ReceivedRecord>> keptBefore;
  private int keptChanges;
  private int keptThere;
  private int firstRefused;

  /** A work that is new or may be changed; {@code old} is null for a new one. */
  private static final class Draft {
    final Stored<Work> old;
    Work now;

    Draft(Stored<Work> old, Work now) {
      this.old = old;
      this.now = now;
    }
  }

  /** What could not be read of a file, to be mended. */
  private record Rejected(String name, byte[] bytes) {}

  /**
   * @param toApply whether {@link #apply} may follow; without it, new works are not held in memory
   */
  public SourceImport(LibraryFolder folder, ImportOptions options, boolean toApply) {
    this.folder = folder;
    this.options = options;
    this.toApply = toApply;
    for (LibraryFile file : folder.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        Path path = file.path();
        known.add(folder.readWork(path).value(), Optional.of(path), Optional.empty());
      }
    }
    keptBefore = folder.readKept();
    kept.addAll(keptBefore.value());
  }

  @Override
  public void source(Incoming record) {
    Optional<Match> again = matcher.again(record);
    if (again.isPresent()) {
      again(record, again.get());
      return;
    }
    Fingerprint print = Fingerprint.of(record.work());
    Optional<Match> match = matcher.find(record, print);
    if (match.isPresent()) {
      compare(record, match.get());
    } else {
      bringIn(record, print);
    }
  }

  private void again(Incoming record, Match match) {
    String where = match.source().place().map(place -> " as " + place).orElse("");
    items.add(
        new Item.There(
            record.place(),
            match.source().key(),
            List.of(match.why().get(0) + where),
            List.of(),
            false,
            List.of()));
  }

  private void compare(Incoming record, Match match) {
    Draft draft = draft(match.source());
    String key = match.source().key();
    Edition ours = draft.now.edition(key);
    Comparison comparison =
        Comparison.of(draft.now.withOnly(ours), record.work(), options.replace());
    Work now = draft.now.withBack(comparison.work());
    boolean changes = !now.equals(draft.now);
    draft.now = now;
    items.add(
        new Item.There(
            record.place(), key, match.why(), comparison.differences(), changes, record.remarks()));
  }

  private Draft draft(Known source) {
    return drafts.computeIfAbsent(
        source.work(),
        id -> {
          Stored<Work> old = folder.readWork(source.file().orElseThrow());
          return new Draft(old, old.value());
        });
  }

  private void bringIn(Incoming record, Fingerprint print) {
    List<String> remarks = new ArrayList<>(record.remarks());
    String key = NewNames.key(record.key(), record.work(), known::isKeyTaken);
    if (record.key().isPresent() && !record.key().get().equals(key)) {
      remarks.add("the file calls it \"" + record.key().get() + "\"");
    }
    Work named = record.work().withEditions(List.of(record.edition().withKey(key)));
    List<Match> doubles = matcher.doubles(record, print);
    Optional<Proposed> proposed = Optional.empty();
    if (doubles.isEmpty()) {
      proposed = Proposals.of(print, said(record), known.akin(print));
    }
    boolean joins = proposed.isPresent() && options.joins(key);
    Work work =
        joins
            ? joined(proposed.get(), named)
            : named.withId(NewNames.work(named, known::isWorkTaken));
    hold(work, named, record.place());
    items.add(
        new Item.New(
            record.place(),
            key,
            line(named),
            work.id(),
            proposed.map(
                p -> new Item.Proposal(p.beside().work(), p.beside().key(), p.why(), joins)),
            doubles.stream()
                .findFirst()
                .map(d -> new Item.Again(d.source().key(), d.source().place(), d.why())),
            remarks));
  }

  /** The work that the source is beside, with the source as one more edition. */
  private Work joined(Proposed proposed, Work source) {
    Work work = draft(proposed.beside()).now;
    Edition edition = source.editions().get(0);
    if (edition.lineage().isEmpty()) {
      edition =
          edition.withLineage(
              new Lineage(
                  proposed.form(),
                  Optional.of(proposed.beside().key()),
                  proposed.beside().fingerprint().year(),
                  Optional.empty(),
                  List.of()));
    }
    List<String> titles = new ArrayList<>(work.alternateTitles());
    OwnTitle title = new OwnTitle(source.title(), source.subtitle());
    if (!title.equals(new OwnTitle(work.title(), work.subtitle()))) {
      edition = edition.withImprint(edition.imprint().withTitle(Optional.of(title)));
      boolean other = !Fingerprint.folded(source.title()).equals(Fingerprint.folded(work.title()));
      if (other && !titles.contains(title.whole())) {
        titles.add(title.whole());
      }
    }
    List<Edition> editions = new ArrayList<>(work.editions());
    editions.add(edition);
    return work.withAlternateTitles(titles).withEditions(editions);
  }

  /** Remembers a source for the records that follow, and its work for {@link #apply}. */
  private void hold(Work work, Work source, FilePlace place) {
    known.add(source.withId(work.id()), Optional.empty(), Optional.of(place));
    Draft draft = drafts.get(work.id());
    if (draft != null) {
      draft.now = work;
    } else if (toApply || options.joinAll() || !options.join().isEmpty()) {
      drafts.put(work.id(), new Draft(null, work));
    }
  }

  private static String said(Incoming record) {
    StringBuilder said = new StringBuilder();
    for (Field field : record.received().fields()) {
      if (said.length() < SEARCHED) {
        said.append(field.value(), 0, Math.min(SEARCHED, field.value().length())).append(' ');
      }
    }
    return said.toString();
  }

  private static String line(Work work) {
    Edition edition = work.editions().get(0);
    String names = ShortReference.names(work, edition);
    String whose = names.equals(work.title()) ? "" : names + ": ";
    String year =
        edition
            .imprint()
            .yearPrinted()
            .or(() -> edition.imprint().year().stream().mapToObj(Integer::toString).findFirst())
            .map(y -> " (" + y + ")")
            .orElse("");
    return whose + work.title() + year;
  }

  @Override
  public void kept(FilePlace place, ReceivedRecord record) {
    int there = kept.indexOf(record);
    if (there >= 0) {
      keptMet.set(there);
      keptThere++;
      return;
    }
    keptChanges++;
    boolean named = !record.id().isEmpty();
    for (int i = 0; i < kept.size(); i++) {
      ReceivedRecord old = kept.get(i);
      boolean same =
          named
              && !keptMet.get(i)
              && old.format().equals(record.format())
              && old.type().equals(record.type())
              && Name.of(old).mayBe(Name.of(record));
      if (same) {
        kept.set(i, record);
        keptMet.set(i);
        return;
      }
    }
    keptMet.set(kept.size());
    kept.add(record);
  }

  @Override
  public void refused(Refused record) {
    refused.add(record);
  }

  /**
   * That a file is read to its end.
   *
   * @param name of the file, for what is kept of it to be mended
   * @param wrapping of its reader
   */
  public void endOfFile(String name, Wrapping wrapping) {
    List<Refused> those = refused.subList(firstRefused, refused.size());
    if (!those.isEmpty() && toApply) {
      rejected.add(new Rejected(name, RejectedFile.of(those, wrapping)));
    }
    firstRefused = refused.size();
  }

  /** How many works {@link #apply} would write. */
  public int works() {
    return drafts.size();
  }

  /** What would be done, or what {@link #apply} has done. */
  public ImportResult result() {
    return new ImportResult(items, refused, keptChanges, keptThere, List.of());
  }

  /**
   * Writes everything, or nothing where it fails.
   *
   * @param progress is told how many works have been got ready
   * @return the same as {@link #result}, with the files under {@code rejected} that hold what could
   *     not be read
   */
  public ImportResult apply(IntConsumer progress) {
    List<String> mend = new ArrayList<>();
    try (ChangeSet changes = folder.change("import of sources")) {
      int ready = 0;
      for (Draft draft : drafts.values()) {
        progress.accept(++ready);
        if (draft.old == null) {
          changes.add(draft.now);
        } else {
          changes.save(draft.old, draft.now);
        }
      }
      if (keptChanges > 0) {
        changes.save(keptBefore, List.copyOf(kept));
      }
      for (Rejected file : rejected) {
        mend.add(changes.reject(file.name(), file.bytes()).toString());
      }
      changes.commit();
    }
    return new ImportResult(items, refused, keptChanges, keptThere, mend);
  }
}
