package merese.store;

import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.store.Ids.Kind;

/** What a file refers to: it must be there. */
final class References {
  private final Reading reading;
  private final Map<Kind, Ids> ids;
  private final Set<Kind> asked;

  References(Reading reading, Map<Kind, Ids> ids) {
    this(reading, ids, Set.of(Kind.values()));
  }

  /**
   * @param asked what is to be looked at; everything else is passed over
   */
  References(Reading reading, Map<Kind, Ids> ids, Set<Kind> asked) {
    this.reading = reading;
    this.ids = ids;
    this.asked = asked;
  }

  void visit(LibraryFile.Kind kind, Spot top) {
    switch (kind) {
      case WORK -> work(top);
      case VOCABULARY -> vocabulary(top);
      case HOMONYMS -> concepts(top.each("homonyms"), "concepts");
      case CHARACTERS -> kinds(top.each("kinds"));
      case OBJECT -> object(top);
      case MINE -> mine(top);
      case PAGES -> require(Kind.EDITION, top.at(PageTextCodec.SOURCE));
      case SETTINGS, RECEIVED -> {}
    }
  }

  private void work(Spot top) {
    for (Spot edition : top.each("editions")) {
      edition(edition);
    }
    for (Spot link : top.each("links")) {
      require(Kind.WORK, link.at("to"));
    }
  }

  private void edition(Spot edition) {
    Spot lineage = edition.at("lineage");
    if (lineage != null) {
      require(Kind.EDITION, lineage.at("parent"));
    }
    scope(edition);
    Ids parts = Ids.local(Kind.PART, edition.each("parts"));
    Ids copies = Ids.local(Kind.COPY, edition.each("copies"));
    for (Spot note : edition.each("notes")) {
      for (Spot naming : note.each("namings")) {
        require(Kind.CONCEPT, naming.at("concept"));
      }
      for (Spot place : note.each("places")) {
        Spot corrects = place.at("corrects");
        if (corrects != null) {
          require(Kind.EDITION, corrects.at("edition"));
        }
      }
      require(parts, Kind.PART, note.at("part"));
      Spot object = note.at("object");
      if (object != null) {
        require(Kind.OBJECT, object.at("ref"));
      }
    }
    for (Spot check : edition.each("checks")) {
      require(Kind.CONCEPT, check.at("concept"));
      require(copies, Kind.COPY, check.at("copy"));
      scope(check);
    }
  }

  private void scope(Spot limited) {
    Spot scope = limited.at("scope");
    if (scope != null) {
      for (Spot concept : scope.each("concepts")) {
        require(Kind.CONCEPT, concept);
      }
    }
  }

  private void vocabulary(Spot top) {
    List<Spot> all = top.each("concepts");
    concepts(all, "broader");
    for (Spot concept : all) {
      for (Spot lookAlike : concept.each("lookAlikes")) {
        require(Kind.CONCEPT, lookAlike.at("concept"));
      }
    }
  }

  private void kinds(List<Spot> kinds) {
    for (Spot kind : kinds) {
      require(Kind.CONCEPT, kind.at("concept"));
    }
  }

  private void concepts(List<Spot> objects, String key) {
    for (Spot object : objects) {
      for (Spot concept : object.each(key)) {
        require(Kind.CONCEPT, concept);
      }
    }
  }

  private void object(Spot top) {
    Ids photographs = Ids.local(Kind.PHOTOGRAPH, top.each("photographs"));
    for (Spot evidence : top.each("evidence")) {
      require(Kind.CONCEPT, evidence.at("concept"));
      require(photographs, Kind.PHOTOGRAPH, evidence.at("photo"));
    }
    for (Spot observation : top.each("observations")) {
      require(photographs, Kind.PHOTOGRAPH, observation.at("photo"));
    }
  }

  private void mine(Spot top) {
    for (String list : List.of("preferences", "coinages", "experience")) {
      for (Spot opinion : top.each(list)) {
        require(Kind.CONCEPT, opinion.at("concept"));
      }
    }
  }

  private void require(Kind kind, Spot spot) {
    require(ids.get(kind), kind, spot);
  }

  private void require(Ids known, Kind kind, Spot spot) {
    if (asked.contains(kind)) {
      known.require(spot, reading);
    }
  }
}
