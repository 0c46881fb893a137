package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Heading;
import merese.answer.Coverage.Passage;
import merese.answer.Coverage.SourceLine;
import merese.answer.concordance.AgreementWords;
import merese.answer.concordance.Concordance;
import merese.answer.concordance.Concordance.Apart;
import merese.answer.concordance.Concordance.Folded;
import merese.answer.concordance.Concordance.Meaning;
import merese.answer.concordance.Concordance.Name;
import merese.answer.concordance.Concordance.Names;
import merese.answer.concordance.Concordance.Safety;
import merese.answer.concordance.Concordance.Word;

/** What stands below the table of a concordance, for every form that it is written in. */
final class ConcordanceNotes {
  private final List<Block> blocks = new ArrayList<>();

  private ConcordanceNotes() {}

  static List<Block> of(Concordance answer) {
    ConcordanceNotes notes = new ConcordanceNotes();
    notes.without(answer);
    answer.apart().forEach(notes::apart);
    notes.folded(answer.folded());
    if (!answer.rows().isEmpty()) {
      notes.names(answer.names());
      notes.words(answer.words());
      notes.add(Block.heading("How far the sources agree on words"));
      AgreementWords.of(answer.agreement()).forEach(s -> notes.add(Block.text(s)));
    }
    return notes.blocks;
  }

  static String legend(Concordance answer) {
    String pictured = ConcordanceTable.PICTURED + " is pictured at the places behind the sign";
    return pictured
        + (answer.folded().isEmpty()
            ? "."
            : "; " + ConcordanceTable.FOLDED + " is counted with another source.");
  }

  private void add(Block block) {
    blocks.add(block);
  }

  private void without(Concordance answer) {
    if (!answer.rows().isEmpty() && !answer.without().isEmpty()) {
      List<String> labels = new ArrayList<>();
      answer.without().forEach(h -> labels.add(Wrap.together(ConcordanceTable.concept(h))));
      add(Block.text("No source has: " + String.join("; ", labels) + "."));
    }
    if (answer.others() > 0 && !answer.rows().isEmpty()) {
      add(
          Block.text(
              answer.others()
                  + (answer.others() == 1 ? " other source has" : " other sources have")
                  + " no note that counts here."));
    }
  }

  private void apart(Apart apart) {
    add(
        Block.heading(
            switch (apart.why()) {
              case OWN_WORK -> "Your own articles and films, not counted";
              case SAYS_NOT_SHOWN -> "Says not shown, not counted";
              case HOW_IT_IS_MADE -> "Shows only how it is made, not counted";
              case MEANING_NOT_STATED -> "Meaning not stated, not counted";
            }));
    for (Entry entry : apart.entries()) {
      List<String> passages = new ArrayList<>();
      for (Passage passage : entry.passages()) {
        String concept = passage.concept().map(c -> " (" + c.label() + ")").orElse("");
        passages.add(
            ConcordanceTable.cell(List.of(withoutConcept(passage))).replace('\n', ' ') + concept);
      }
      add(Block.item(entry.source().reference(), String.join("; ", passages)));
    }
  }

  private static Passage withoutConcept(Passage passage) {
    return new Passage(
        passage.concept(),
        false,
        passage.printed(),
        passage.pictured(),
        passage.inWords(),
        passage.photos());
  }

  private void folded(List<Folded> folded) {
    if (folded.isEmpty()) {
      return;
    }
    add(Block.heading(ConcordanceTable.FOLDED + " Counted with another source"));
    for (Folded each : folded) {
      add(Block.item(each.source().reference(), WitnessesText.why(each.why())));
    }
  }

  private void names(List<Names> all) {
    add(Block.heading("What each is called, by the first naming of each note"));
    for (Names names : all) {
      add(Block.subheading(name(names.concept())));
      for (Name name : names.names()) {
        add(Block.item(quoted(name.word()), uses(name)));
      }
      if (!names.unnamed().isEmpty()) {
        add(Block.item("not named first", references(names.unnamed())));
      }
      if (!names.alsoPrinted().isEmpty()) {
        add(
            Block.item(
                "also printed, not first", "“" + String.join("”, “", names.alsoPrinted()) + "”"));
      }
    }
  }

  private static String name(Heading heading) {
    return ConcordanceTable.concept(heading);
  }

  private static String uses(Name name) {
    String independent =
        name.independent() == name.sources().size()
            ? ""
            : " (" + name.independent() + " independent)";
    List<String> others = new ArrayList<>(name.spellings());
    others.remove(name.word());
    String spelt = others.isEmpty() ? "" : "; also “" + String.join("”, “", others) + "”";
    return Page.many(name.sources().size(), "source")
        + independent
        + ": "
        + references(name.sources())
        + spelt;
  }

  private void words(List<Word> words) {
    for (Safety safety : Safety.values()) {
      List<Word> those = words.stream().filter(w -> w.safety() == safety).toList();
      if (those.isEmpty()) {
        continue;
      }
      add(
          Block.heading(
              switch (safety) {
                case NOT_SAFE -> "Words that are not safe: several meanings in this library";
                case NOT_CERTAIN ->
                    "Words that are not certain: left open, or seen used for something else";
                case SAFE -> "Words that are safe: one meaning in this library";
              }));
      for (Word word : those) {
        List<String> meanings = new ArrayList<>();
        word.meanings().forEach(m -> meanings.add(meaning(m)));
        if (!word.notStated().isEmpty()) {
          meanings.add("meaning not stated (" + references(word.notStated()) + ")");
        }
        add(Block.item(quoted(word.word()), String.join(", ", meanings)));
      }
    }
  }

  private static String meaning(Meaning meaning) {
    List<String> by = new ArrayList<>();
    if (!meaning.stated().isEmpty()) {
      by.add(references(meaning.stated()));
    }
    if (!meaning.seen().isEmpty()) {
      by.add("by a picture or your reading only: " + references(meaning.seen()));
    }
    if (by.isEmpty()) {
      by.add("by the vocabulary");
    }
    return meaning.concept().label() + " (" + String.join("; ", by) + ")";
  }

  private static String quoted(String word) {
    return "“" + word + "”";
  }

  private static String references(List<SourceLine> sources) {
    List<String> names = new ArrayList<>();
    sources.forEach(s -> names.add(Wrap.together(s.reference())));
    return String.join("; ", names);
  }
}
