package merese.cli;

import static merese.testing.SmallLibrary.check;
import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.prints;
import static merese.testing.SmallLibrary.says;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import merese.model.Check;
import merese.model.Claim;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Mine;
import merese.model.Naming.Why;
import merese.model.OwnObject;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.model.SourceKind;
import merese.model.Work;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;

/** Libraries on disk that screens are shown of, each made once, with its index. */
final class Shelves {
  private final Path folder;
  private final Map<String, Path> made = new HashMap<>();

  Shelves(Path folder) {
    this.folder = folder;
  }

  /** The folder of a library: {@code demo}, {@code empty}, {@code rings} and more. */
  Path of(String name) {
    return made.computeIfAbsent(name, this::make);
  }

  private Path make(String name) {
    Path home = folder.resolve(name);
    switch (name) {
      case "demo" -> copy(Path.of("library").toAbsolutePath(), home.resolve("library"));
      case "empty" -> new SmallLibrary().write(home);
      case "rings" -> rings().write(home);
      case "words" -> ConcordanceShelves.words().write(home);
      case "wide" -> ConcordanceShelves.of(20, 12).write(home);
      case "low" -> ConcordanceShelves.of(2, 12).write(home);
      default -> throw new IllegalArgumentException("there is no library called " + name);
    }
    Ran.in(home, Map.of(), "covers", "neck ring"); // makes the index
    return home;
  }

  private static void copy(Path from, Path to) {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A little of everything about bladed rings; all names and titles are invented. */
  private static SmallLibrary rings() {
    NoteMaker knife =
        says("knife-edged rings", "ring-bladed")
            .text("p. 41")
            .place("pl. XII", Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, null, "quenby-a")
            .claims(Claim.Kind.PLACE, "almost wholly Irish", "Ireland");
    NoteMaker again =
        says("bladed ring", "ring-bladed")
            .place("pl. 31", Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, null, "quenby-a");
    Edition first = edition("quenby-1926", 1926, knife);
    Edition second = borrowed(edition("quenby-1949", 1949, again));
    return new SmallLibrary()
        .work(withEditions(monograph("Quenby", 1926, "Neck and Stopper"), first, second))
        .book(
            "Tressick",
            1954,
            "Cut and Blown",
            says("triangular rings", "ring-bladed")
                .text("p. 88")
                .claims(Claim.Kind.PLACE, "made at Cork and elsewhere in Ireland", null),
            says("cut rings", "ring-facet-cut").photo("fig. 70"),
            says("necks with a blade", "neck-ring").text("p. 90"))
        .work(
            ofKind(
                SourceKind.MUSEUM_CATALOGUE,
                monograph(
                    "Norrish",
                    1971,
                    "The Ringed Decanter",
                    new NoteMaker()
                        .naming("plain rings", "ring-bladed", Why.MY_READING)
                        .naming("triangular in section", "ring-bladed", Why.TEXT)
                        .place(
                            "cat. no. 9", Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, "n1")
                        .place(
                            "cat. no. 9", Stance.NAMES, Medium.CAPTION, null, "plain rings", "n1")
                        .place(
                            "p. 30",
                            Stance.DESCRIBES_UNNAMED,
                            Medium.TEXT,
                            null,
                            "triangular in section",
                            "n1")
                        .claims(Claim.Kind.PLACE, "chiefly English", "England")
                        .reading("a bladed ring: I see a sharp edge"))))
        .book(
            "Haskeld",
            1983,
            "A Table-Glass Primer",
            says("drawing out the blade", "ring-bladed").process("figs 5–7"),
            says("bladed ring", "ring-bladed").absent("p. 12"))
        .book(
            "Farrow",
            1988,
            "Triple Rings",
            prints("a blade-ringed quart").text("p. 7"),
            check("ring-bladed", "pp. 5–20", Check.Method.READ),
            check("bowl-thistle", null, Check.Method.INDEX_ONLY))
        .book("Dunlavin", 1990, "Glass of the Two Islands")
        .book(
            "Calloway",
            2003,
            "Stems",
            prints("collared stem").text("p. 3"),
            says("bladed", "knop-bladed").photo("pl. 4"))
        .work(
            own(
                monograph(
                    "Ruddick",
                    2016,
                    "Rings at Lantern Street",
                    says("knife ring", "ring-bladed").photo("fig. 2"))))
        .object(
            new OwnObject(
                "d-1",
                "Quart decanter",
                Optional.empty(),
                Optional.of("a fair; the seller said Irish"),
                List.of(
                    new OwnObject.Evidence(
                        "ring-bladed",
                        OwnObject.Evidence.Kind.MIXED,
                        Optional.of("one ring is rounded for a third of its length"),
                        Optional.empty())),
                List.of(),
                List.of()))
        .mine(mine());
  }

  private static Mine mine() {
    return new Mine(
        List.of(
            new Mine.Preference(
                "ring-bladed",
                "knife ring",
                Optional.of("describes-better"),
                List.of(new Mine.SetAside("bladed ring", Optional.of("some are not blades"))),
                Optional.of(LocalDate.of(2025, 3, 2)))),
        List.of(
            new Mine.Coinage(
                "tail-over ring",
                "ring-applied",
                Optional.of("Tom Ruddick"),
                Optional.of(LocalDate.of(2024, 11, 16)),
                Optional.of("object d-1"))),
        List.of(
            new Mine.Experience(
                "ring-bladed",
                Claim.Kind.FREQUENCY,
                "one ringed decanter in nine has them",
                OptionalInt.of(1),
                OptionalInt.of(2024)),
            new Mine.Experience(
                "ring-bladed",
                Claim.Kind.METHOD,
                "the join is never felt",
                OptionalInt.empty(),
                OptionalInt.empty())),
        List.of(
            new Mine.Untraced(
                "bishop's ring", Optional.of("in a talk about 2005"), Optional.empty())));
  }

  private static Work withEditions(Work work, Edition... editions) {
    return changed(work, work.kind(), work.mine(), List.of(editions));
  }

  private static Work ofKind(SourceKind kind, Work work) {
    return changed(work, kind, work.mine(), work.editions());
  }

  private static Work own(Work work) {
    return changed(work, work.kind(), true, work.editions());
  }

  private static Work changed(Work work, SourceKind kind, boolean mine, List<Edition> editions) {
    return new Work(
        work.id(),
        kind,
        work.title(),
        work.subtitle(),
        work.alternateTitles(),
        work.contributors(),
        work.language(),
        mine,
        editions,
        work.links());
  }

  private static Edition borrowed(Edition edition) {
    Copy elsewhere =
        new Copy(
            "c1",
            Optional.of("Osmere Museum Library"),
            Optional.empty(),
            Optional.empty(),
            false,
            Optional.empty());
    return new Edition(
        edition.key(),
        edition.imprint(),
        edition.lineage(),
        edition.container(),
        edition.occasion(),
        edition.archive(),
        edition.online(),
        edition.scope(),
        edition.parts(),
        List.of(elsewhere),
        edition.notes(),
        edition.checks(),
        edition.received());
  }
}
