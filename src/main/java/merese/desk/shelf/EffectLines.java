package merese.desk.shelf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import merese.change.Effect;
import merese.change.Effect.Sort;

/** What a change does, sort by sort, for a page that shows it first. */
public final class EffectLines {
  private EffectLines() {}

  /** A sort with its lines. */
  public record Group(String name, List<String> lines) {}

  public static List<Group> of(List<Effect> effects) {
    List<Group> groups = new ArrayList<>();
    for (Sort sort : Sort.values()) {
      List<String> lines =
          effects.stream().filter(e -> e.sort() == sort).map(Effect::what).toList();
      if (!lines.isEmpty()) {
        groups.add(new Group(name(sort), lines));
      }
    }
    return groups;
  }

  private static String name(Sort sort) {
    return switch (sort) {
      case ADDED -> "Is added";
      case STAYS -> "Stays as it is";
      case RENAMED -> "Is renamed";
      case FOLLOWS -> "Follows";
      case DROPPED -> "Is no more";
      case LOOK_AT -> "Look at this yourself";
    };
  }

  /** By which a confirmation says which preview it has seen. */
  static String hash(Record preview) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(preview.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, 16);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
