package merese.desk.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Grouped;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.Photo;
import merese.answer.Coverage.PieceLine;
import merese.answer.Coverage.Section;
import merese.desk.web.Site;

/** The pictures that the user has of a feature, across sources and pieces. */
public final class Pictures {
  private Pictures() {}

  /**
   * One picture.
   *
   * @param path below /pictures/, fit for an address
   * @param reference the source, or the piece
   * @param at where in it
   * @param words what stands for it: each term that is printed there, in quotation marks, or what
   *     the piece shows; "" for none
   */
  public record Picture(String path, String reference, String at, String words) {
    public String alt() {
      return words.isEmpty() ? reference + ", " + at : words + ": " + reference + ", " + at;
    }
  }

  /**
   * Those of a section, in the order of its entries, then the user's own pieces.
   *
   * @param photographs of own pieces, their files by "reference, id"; only those that are there
   * @param countingOnly whether those are left out that show something else, or what was not asked
   *     for
   */
  public static List<Picture> of(
      Section section, Map<String, String> photographs, boolean countingOnly) {
    List<Picture> pictures = new ArrayList<>();
    boolean counts = false;
    for (Grouped group : section.groups()) {
      boolean counted = group.group() == Group.COUNTED || group.group() == Group.SAME_FEATURE;
      counts |= counted;
      if (countingOnly && !counted) {
        continue;
      }
      for (Entry entry : group.entries()) {
        for (Passage passage : entry.passages()) {
          for (Photo photo : passage.photos()) {
            pictures.add(
                new Picture(
                    path(photo.file()),
                    entry.source().reference(),
                    photo.locator().printed(),
                    quoted(passage.printed())));
          }
        }
      }
    }
    for (PieceLine piece : countingOnly && !counts ? List.<PieceLine>of() : section.ownPieces()) {
      String id = piece.photo().orElse("");
      String file = photographs.get(piece.ref() + ", " + id);
      if (file != null) {
        pictures.add(new Picture(path(file), piece.ref(), id, piece.words().orElse("")));
      }
    }
    return pictures;
  }

  private static String quoted(List<String> printed) {
    List<String> each = new ArrayList<>();
    printed.forEach(term -> each.add("“" + term + "”"));
    return String.join(", ", each);
  }

  /** The address below /pictures/ of a file. */
  public static String path(String file) {
    List<String> names = new ArrayList<>();
    for (String name : file.split("/", -1)) {
      names.add(Site.encoded(name).replace("+", "%20"));
    }
    return String.join("/", names);
  }
}
