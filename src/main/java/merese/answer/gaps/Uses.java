package merese.answer.gaps;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import merese.answer.Classifier.Classified;
import merese.answer.Coverage.Group;
import merese.answer.SourceLines;
import merese.answer.gaps.GapList.Use;
import merese.model.Locator;
import merese.model.Place;
import merese.model.PlaceTest;
import merese.shelf.Source;

/** Puts the notes of a group together, one line a source. */
final class Uses {
  private Uses() {}

  private static final class Line {
    final Set<String> printed = new LinkedHashSet<>();
    final Set<Locator> pictured = new TreeSet<>();
    final Set<Locator> inWords = new TreeSet<>();
  }

  static List<Use> of(List<Classified> notes, SourceLines lines, List<Source> among, Group group) {
    PlaceTest test =
        switch (group) {
          case COUNTED, OWN_WORK -> PlaceTest.COVERS;
          case SAYS_NOT_SHOWN -> PlaceTest.ABSENCE;
          default -> PlaceTest.PRESENT;
        };
    Map<Source, Line> bySource = new LinkedHashMap<>();
    List<Classified> sorted = new ArrayList<>(notes);
    sorted.sort((a, b) -> a.sourced().note().id().compareTo(b.sourced().note().id()));
    for (Classified classified : sorted) {
      Source source = classified.sourced().source();
      if (group != Group.OWN_WORK && !among.contains(source)) {
        continue;
      }
      Line line = bySource.computeIfAbsent(source, s -> new Line());
      for (Place place : classified.places()) {
        if (test.holds(place)) {
          (place.isPictured() ? line.pictured : line.inWords).add(place.locator());
        }
      }
      if (!classified.naming().printed().isEmpty()) {
        line.printed.add(classified.naming().printed());
      }
    }
    List<Use> uses = new ArrayList<>();
    for (Source source : lines.sorted(bySource.keySet())) {
      Line line = bySource.get(source);
      line.inWords.removeAll(line.pictured);
      List<String> printed = new ArrayList<>(line.printed);
      printed.sort(null);
      uses.add(
          new Use(
              lines.of(source), printed, List.copyOf(line.pictured), List.copyOf(line.inWords)));
    }
    return uses;
  }
}
