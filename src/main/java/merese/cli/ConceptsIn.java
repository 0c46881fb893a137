package merese.cli;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.json.AnswerJson;
import merese.change.concepts.AatLinks;
import merese.change.concepts.AatResult;
import merese.change.concepts.ConceptImport;
import merese.change.concepts.ConceptOptions;
import merese.change.concepts.ConceptResult;
import merese.change.records.RecordFormat;
import merese.exchange.skos.AatTerms;
import merese.exchange.skos.SkosAddresses;
import merese.exchange.skos.SkosReader;
import merese.store.LibraryFolder;

/**
 * Brings in the concepts of a vocabulary, or links to those of the AAT. The only class that loads
 * what reads SKOS, so that no other command pays for it.
 */
final class ConceptsIn {
  private final Context context;
  private final LibraryFolder library;
  private final Given given;

  /**
   * What was typed.
   *
   * @param apply whether it is done, or only said
   * @param replace whether a file's word replaces the library's
   * @param facet for new concepts that nothing else places
   * @param language of the labels to take
   * @param chosen answers to questions, each "KEY=VALUE"
   * @param all whether long sections are printed to their end
   */
  record Given(
      boolean apply,
      boolean replace,
      Optional<String> facet,
      Optional<String> language,
      List<String> chosen,
      boolean all,
      boolean json) {}

  ConceptsIn(Context context, LibraryFolder library, Given given) {
    this.context = context;
    this.library = library;
    this.given = given;
  }

  /** Returns an {@link ExitCode}. */
  int read(RecordFile file) throws IOException {
    return file.format() == RecordFormat.AAT ? links(file) : concepts(file);
  }

  private int concepts(RecordFile file) throws IOException {
    ConceptOptions options =
        new ConceptOptions(
            given.language(), SkosAddresses.usual(), given.facet(), given.replace(), answers());
    ConceptImport plan =
        ConceptImport.plan(library, SkosReader.usual().read(file.name(), file.in()), options);
    ConceptResult result = given.apply() ? plan.apply() : plan.result();
    if (given.json()) {
      AnswerJson.print(context.out(), result);
    } else {
      Page page = new Page(context.out(), context.screen());
      new ConceptImportText(page, given.all(), given.apply()).print(result);
      page.text(conclusion(result.changesNothing(), !result.questions().isEmpty()));
      result
          .mend()
          .ifPresent(
              mend ->
                  page.text(
                      "What could not be taken is in "
                          + mend
                          + ": mend it there, and import that file."));
    }
    return given.apply() && !result.refused().isEmpty() ? ExitCode.FAILED : ExitCode.DONE;
  }

  private int links(RecordFile file) throws IOException {
    AatLinks plan = AatLinks.plan(library, AatTerms.read(file.name(), file.in()), answers());
    AatResult result = given.apply() ? plan.apply() : plan.result();
    if (given.json()) {
      AnswerJson.print(context.out(), result);
    } else {
      Page page = new Page(context.out(), context.screen());
      new AatLinksText(page, given.all(), given.apply()).print(result);
      page.text(conclusion(result.changesNothing(), !result.questions().isEmpty()));
    }
    return ExitCode.DONE;
  }

  private String conclusion(boolean nothing, boolean asks) {
    if (nothing) {
      return asks ? "Nothing is done before the questions are answered." : "Nothing to do.";
    }
    return given.apply() ? "Done." : "Nothing has been written. With --apply, this is done.";
  }

  private Map<String, String> answers() {
    Map<String, String> answers = new LinkedHashMap<>();
    for (String chosen : given.chosen()) {
      int sign = chosen.lastIndexOf('=');
      if (sign < 1 || sign == chosen.length() - 1) {
        throw CommandException.wrongUse(
            "--choose: \"" + chosen + "\" is no answer; write it as the question does, KEY=VALUE");
      }
      answers.put(chosen.substring(0, sign).strip(), chosen.substring(sign + 1).strip());
    }
    return answers;
  }
}
