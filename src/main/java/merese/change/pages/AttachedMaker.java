package merese.change.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import merese.change.pages.Attached.Outcome;
import merese.change.pages.Attached.Sample;
import merese.change.pages.Attached.Stretch;
import merese.model.PageLines;
import merese.model.PageMap;
import merese.model.PageText;

/** What there is to say of page texts. */
final class AttachedMaker {
  private static final int SAMPLES = 6;
  private static final int WORDS = 60;
  private static final int SHORT = 24;

  private final PageText text;
  private final PageMap map;

  AttachedMaker(PageText text) {
    this.text = text;
    this.map = text.map();
  }

  /**
   * @param reference author and year
   */
  Attached make(
      String reference, String name, List<String> remarks, Outcome outcome, OptionalInt change) {
    int pages = text.pages().size();
    List<Integer> empty = new ArrayList<>();
    for (int page = 1; page <= pages; page++) {
      if (lines(page).isEmpty()) {
        empty.add(page);
      }
    }
    List<Stretch> stretches = new ArrayList<>();
    int named = 0;
    for (int[] each : map.stretches(pages)) {
      named += each[1] - each[0] + 1;
      stretches.add(new Stretch(each[0], each[1], read(each[0]), read(each[1])));
    }
    return new Attached(
        text.source(),
        reference,
        name,
        text.file(),
        text.from().code(),
        pages,
        empty,
        map.toString(),
        stretches,
        pages - named,
        samples(pages),
        withDoubts(remarks),
        outcome,
        change);
  }

  private List<String> withDoubts(List<String> remarks) {
    List<String> all = new ArrayList<>(remarks);
    for (String odd : map.oddOpenings()) {
      all.add(
          "The map has "
              + odd
              + " side by side, but as a rule the left page of an opening has an even number: hold"
              + " it against the book.");
    }
    return all;
  }

  private String read(int page) {
    return map.isUnnumbered(page) ? "unnumbered" : map.cited(page);
  }

  private PageLines lines(int page) {
    return text.pages().get(page - 1);
  }

  /** The first page that has text of each part of the map, and the last; else of the file. */
  private List<Sample> samples(int pages) {
    TreeSet<Integer> chosen = new TreeSet<>();
    List<int[]> stretches = new ArrayList<>(map.stretches(pages));
    stretches.removeIf(each -> map.isUnnumbered(each[0]));
    if (stretches.isEmpty()) {
      stretches.add(new int[] {1, pages});
      stretches.add(new int[] {pages / 2 + 1, pages});
    }
    for (int[] each : stretches) {
      take(chosen, each[0], each[1], 1);
    }
    for (int[] each : stretches) {
      take(chosen, each[1], each[0], -1);
    }
    List<Sample> samples = new ArrayList<>();
    for (int page : chosen) {
      samples.add(new Sample(page, map.cited(page), begin(lines(page).lines())));
    }
    return samples;
  }

  private void take(Set<Integer> chosen, int from, int to, int step) {
    for (int page = from; page != to + step && chosen.size() < SAMPLES; page += step) {
      if (!lines(page).isEmpty()) {
        chosen.add(page);
        return;
      }
    }
  }

  /** The first line; with the second where it is short, as a heading is. */
  private static String begin(List<String> lines) {
    String first = lines.get(0);
    String begin =
        first.length() < SHORT && lines.size() > 1 ? first + " / " + lines.get(1) : first;
    if (begin.length() <= WORDS) {
      return begin;
    }
    int end = begin.lastIndexOf(' ', WORDS);
    return begin.substring(0, end > 0 ? end : begin.offsetByCodePoints(0, WORDS / 2)) + " …";
  }
}
