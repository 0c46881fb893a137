package merese.desk.shelf;

import com.github.difflib.DiffUtils;
import com.github.difflib.algorithm.myers.MyersDiffWithLinearSpace;
import com.github.difflib.patch.AbstractDelta;
import com.github.difflib.patch.Chunk;
import com.github.difflib.patch.DeltaType;
import java.util.ArrayList;
import java.util.List;
import merese.desk.shelf.LineDifference.Row.Of;

/** In which lines two texts differ, with some of what stands around them. */
public final class LineDifference {
  private static final int AROUND = 3;

  private LineDifference() {}

  /**
   * A line.
   *
   * @param number on the disk, or of what was typed where it is only there; 0 for lines left out
   */
  public record Row(Of of, int number, String text) {
    /** Where a line stands. */
    public enum Of {
      BOTH,
      DISK,
      TYPED,
      LEFT_OUT
    }

    /** For a reader who sees no colour. */
    public String sign() {
      return switch (of) {
        case BOTH, LEFT_OUT -> "";
        case DISK -> "on the disk";
        case TYPED -> "in your text";
      };
    }
  }

  static List<Row> between(String disk, String typed) {
    List<Row> all = new ArrayList<>();
    var patch =
        DiffUtils.diff(
            List.of(disk.split("\n", -1)),
            List.of(typed.split("\n", -1)),
            new MyersDiffWithLinearSpace<>(),
            null,
            true);
    for (AbstractDelta<String> delta : patch.getDeltas()) {
      boolean same = delta.getType() == DeltaType.EQUAL;
      add(same ? Of.BOTH : Of.DISK, delta.getSource(), all);
      if (!same) {
        add(Of.TYPED, delta.getTarget(), all);
      }
    }
    return shortened(all);
  }

  private static void add(Of of, Chunk<String> lines, List<Row> to) {
    int number = lines.getPosition();
    for (String line : lines.getLines()) {
      number++;
      to.add(new Row(of, number, line));
    }
  }

  private static List<Row> shortened(List<Row> all) {
    boolean[] shown = new boolean[all.size()];
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).of() != Of.BOTH) {
        for (int k = Math.max(0, i - AROUND); k <= Math.min(all.size() - 1, i + AROUND); k++) {
          shown[k] = true;
        }
      }
    }
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (shown[i]) {
        rows.add(all.get(i));
      } else if (rows.isEmpty() || rows.get(rows.size() - 1).of() != Of.LEFT_OUT) {
        rows.add(new Row(Of.LEFT_OUT, 0, "…"));
      }
    }
    return rows;
  }
}
