package merese.cli;

import java.util.List;
import java.util.function.Consumer;
import merese.change.Effect;
import merese.change.Effect.Sort;

/** What a merge or a split does, laid out; the sorts in their order, each with its lines. */
final class EffectText {
  /** As wide as the widest of the names beside the lines. */
  static final int WIDTH = 8;

  private final Page page;

  EffectText(Page page) {
    this.page = page;
  }

  void print(List<Effect> effects) {
    for (Sort sort : Sort.values()) {
      List<Effect> of = effects.stream().filter(effect -> effect.sort() == sort).toList();
      if (!of.isEmpty()) {
        rows(name(sort), line -> of.forEach(effect -> line.accept(effect.what())));
      }
    }
  }

  /** Lines beside a name. */
  void rows(String name, Consumer<Consumer<String>> lines) {
    Page.Columns columns = page.columns("", name, WIDTH);
    lines.accept(columns::line);
  }

  private static String name(Sort sort) {
    return switch (sort) {
      case ADDED -> "Added";
      case STAYS -> "Stays";
      case RENAMED -> "Renamed";
      case FOLLOWS -> "Follows";
      case DROPPED -> "Dropped";
      case LOOK_AT -> "Look at";
    };
  }
}
