package merese.change.checks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.change.records.Doubles;
import merese.model.CharacterKey;
import merese.model.Edition;
import merese.model.Homonym;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.model.Work;
import merese.store.History;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.Problem;
import merese.store.Problem.Severity;
import merese.store.Stored;
import merese.store.VocabularyFile;

/**
 * Everything that is looked for beyond what the store finds: it takes the files of a library one by
 * one, keeps only what it must compare, and then says what it has found.
 */
public final class Checking {
  private final LibraryFolder folder;
  private final Findings findings = new Findings();
  private final Slips slips;
  private final WorkSlips workSlips = new WorkSlips(findings);
  private final Descent descent = new Descent();
  private final CorrectedPlaces corrected = new CorrectedPlaces();
  private final Doubles doubles = new Doubles();
  private final VocabularyCheck skos;
  private final Map<Path, Stored<Work>> kept = new HashMap<>();
  private final VocabularySlips words = new VocabularySlips(findings);

  public Checking(LibraryFolder folder) {
    this.folder = folder;
    this.slips = new Slips(folder, findings);
    this.skos = new VocabularyCheck(folder);
  }

  public void work(Stored<Work> file) {
    slips.work(file);
    workSlips.look(file);
    for (Edition edition : file.value().editions()) {
      new NoteSlips(file, edition, findings).look();
      new Spelling(file, edition, findings).look();
    }
    descent.add(file);
    corrected.add(file);
    doubles.add(file.value(), file.file());
    words.use(file.value());
  }

  /** A work that is not what its file holds, and so cannot be read again. */
  public void keep(Stored<Work> file) {
    kept.put(file.file(), file);
  }

  private Stored<Work> reread(Path file) {
    Stored<Work> work = kept.get(file);
    return work == null ? folder.readWork(file) : work;
  }

  public void vocabulary(Stored<VocabularyFile> file) {
    skos.add(file);
    words.add(file);
  }

  public void object(Stored<OwnObject> file) {
    slips.object(file);
    words.use(file.value());
  }

  public void mine(Stored<Mine> file) {
    slips.mine(file);
    words.use(file.value());
  }

  public void homonyms(Stored<List<Homonym>> file) {
    skos.register(file);
    words.register(file.value());
  }

  public void characters(CharacterKey key) {
    words.use(key);
  }

  /** That a file could not be read. */
  public void lacks(LibraryFile file) {
    skos.lacks(file);
  }

  /** How many concepts there are. */
  public int concepts() {
    return skos.size();
  }

  /**
   * All that was found.
   *
   * @param vocabulary whether the store has found no fault in the vocabulary: what is said of a
   *     broken one may not be true
   */
  public List<Problem> problems(boolean vocabulary) {
    List<Problem> all = new ArrayList<>();
    if (vocabulary && skos.isComplete()) {
      List<Problem> broken = skos.problems();
      all.addAll(broken);
      if (broken.isEmpty()) {
        words.look();
      }
    }
    descent.look(this::reread, findings);
    corrected.look(this::reread, findings);
    doubles.found().forEach(this::twice);
    History.of(folder).damaged().forEach(findings::add);
    for (Path leftover : folder.leftovers()) {
      findings.add(
          new Problem(
              leftover,
              0,
              0,
              "",
              "a save that was killed has left this behind",
              "merese check --fix takes it away",
              Severity.WARNING));
    }
    all.addAll(findings.all());
    return all;
  }

  private void twice(Doubles.Pair pair) {
    Stored<Work> file = reread(pair.file());
    findings.warn(
        file,
        Position.inEdition(file.content(), pair.key()),
        pair.key(),
        pair.other() + " has " + pair.why() + ": it may be the same thing",
        "if it is: merese merge " + pair.other() + " " + pair.key() + " --one-edition");
  }
}
