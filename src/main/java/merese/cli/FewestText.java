package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.SourceLine;
import merese.answer.fewest.FewestSources;
import merese.answer.fewest.FewestSources.Choice;
import merese.answer.fewest.FewestSources.Find;
import merese.answer.fewest.FewestSources.Instead;
import merese.answer.fewest.FewestSources.MoreTies;
import merese.answer.fewest.FewestSources.Nowhere;
import merese.answer.fewest.FewestSources.Rank;
import merese.answer.fewest.FewestSources.Taken;
import merese.answer.fewest.FewestSources.Tie;

/** Lays out the fewest sources, what each has, and which others are as few. */
final class FewestText {
  private static final String INDENT = "    ";
  private static final int WIDEST = 26;

  private final Page page;

  FewestText(Page page) {
    this.page = page;
  }

  void print(FewestSources answer) {
    if (answer.best().isPresent()) {
      best(answer, answer.best().get());
    } else {
      page.text(
          answer.pictured() ? "No source pictures any of these." : "No source has any of these.");
    }
    nowhere(answer.nowhere(), answer.pictured(), answer.best().isPresent());
    if (answer.best().isPresent()) {
      ties(answer, answer.best().get());
    }
    answer.instead().ifPresent(this::instead);
  }

  private void best(FewestSources answer, Choice best) {
    int topics = answer.topics().size() - answer.nowhere().size();
    String what =
        (answer.pictured() ? " pictured by " : " covered by ")
            + Page.many(best.rank().sources(), "source");
    page.heading(
        Page.many(topics, "feature")
            + what
            + (answer.proof().fewest()
                ? ", and by no fewer (proved)."
                : "; whether fewer would do is not proved."));
    if (!answer.proof().fewest()) {
      page.text(
          "At least "
              + answer.proof().atLeast()
              + " are needed; the search ended after "
              + Page.many(answer.proof().seconds(), "second")
              + " (--seconds N).");
    } else if (!answer.proof().ranked()) {
      page.text("Which of those as few comes first was not settled in the time (--seconds N).");
    }
    choice(best);
    about("In words only", best.inWordsOnly());
    about("Only as something narrower", best.narrowerOnly());
  }

  private void choice(Choice choice) {
    int wide = 0;
    for (Taken taken : choice.sources()) {
      for (Find find : taken.finds()) {
        wide = Math.max(wide, Wrap.columns(EntryText.label(find.topic())));
      }
    }
    for (Taken taken : choice.sources()) {
      SourceLine source = taken.source();
      page.hanging(
          "  ",
          source.reference()
              + (taken.must() ? " (as you asked)" : "")
              + Page.given(" [", source.whereabouts(), "]"));
      for (Find find : taken.finds()) {
        Page.Columns columns =
            page.columns(INDENT, EntryText.label(find.topic()), Math.min(wide, WIDEST));
        find.passages().forEach(passage -> columns.line(EntryText.passage(passage)));
      }
    }
  }

  private void about(String what, List<Heading> topics) {
    if (!topics.isEmpty()) {
      page.hanging(
          "  ",
          what + ": " + String.join(", ", topics.stream().map(EntryText::label).toList()) + ".");
    }
  }

  private void nowhere(List<Nowhere> nowhere, boolean pictured, boolean hasBest) {
    List<Nowhere> bare = nowhere.stream().filter(FewestText::isBare).toList();
    if (!bare.isEmpty() && hasBest) {
      leftOut(bare, pictured);
    }
    for (Nowhere each : nowhere) {
      if (!isBare(each)) {
        leftOut(List.of(each), pictured);
        references("In words", each.inWords());
        references("Not to be taken", each.notAllowed());
        references("Says that it is not shown", each.saysNotShown());
        references("Your own, which is no source here", each.ownWork());
      }
    }
  }

  /** Whether nothing at all has to do with it. */
  private static boolean isBare(Nowhere nowhere) {
    return nowhere.inWords().isEmpty()
        && nowhere.notAllowed().isEmpty()
        && nowhere.saysNotShown().isEmpty()
        && nowhere.ownWork().isEmpty();
  }

  private void leftOut(List<Nowhere> features, boolean pictured) {
    page.blank();
    boolean all = features.stream().allMatch(each -> each.notAllowed().isEmpty());
    page.hanging(
        "",
        "No source "
            + (all ? "" : "that may be taken ")
            + (pictured ? "pictures " : "has ")
            + String.join(
                "; ", features.stream().map(each -> EntryText.label(each.topic())).toList())
            + (features.size() == 1 ? "; it is left out." : "; they are left out."));
  }

  private void references(String what, List<SourceLine> sources) {
    if (!sources.isEmpty()) {
      page.hanging("  ", what + ": " + references(sources) + ".");
    }
  }

  private static String references(List<SourceLine> sources) {
    List<String> references = new ArrayList<>();
    sources.forEach(source -> references.add(Wrap.together(source.reference())));
    return String.join("; ", references);
  }

  private void ties(FewestSources answer, Choice best) {
    if (!answer.ties().isEmpty()) {
      page.blank();
      page.heading("As few");
      for (Tie tie : answer.ties()) {
        page.hanging("  ", references(tie.sources()) + " (" + behind(tie, best.rank()) + ")");
      }
      if (answer.moreTies() == MoreTies.SOME) {
        page.hanging("  ", "and more.");
      }
    }
    if (answer.ties().isEmpty() && answer.moreTies() == MoreTies.NONE && answer.proof().fewest()) {
      page.blank();
      page.text("No other choice is as small.");
    }
    if (answer.moreTies() == MoreTies.NOT_KNOWN) {
      page.text("There may be more that are as few: the time did not suffice to look.");
    }
  }

  private static String behind(Tie tie, Rank best) {
    Rank rank = tie.rank();
    return switch (tie.behind()) {
      case PICTURED -> rank.pictured() + " pictured, not " + best.pictured();
      case EXACT -> rank.exact() + " as asked, not " + best.exact();
      case OWNED -> rank.owned() + " owned, not " + best.owned();
      case YEARS ->
          "loses on years: "
              + String.join(", ", best.years())
              + " before "
              + String.join(", ", rank.years());
      case AUTHORS -> "comes later by its authors alone";
    };
  }

  private void instead(Instead instead) {
    page.blank();
    page.hanging(
        "",
        "⚠ not to hand: "
            + String.join(
                "; ",
                instead.unavailable().stream()
                    .map(s -> Wrap.together(s.reference()) + " (" + s.whereabouts().get() + ")")
                    .toList())
            + ".");
    if (instead.choice().isEmpty()) {
      page.text("Without what is not to hand, some feature is in no source.");
    } else {
      int count = instead.choice().get().rank().sources();
      page.text(
          "With what is to hand, "
              + Page.many(count, "source")
              + (instead.proved() ? "" : " (whether fewer would do is not proved)")
              + ":");
      choice(instead.choice().get());
    }
  }
}
