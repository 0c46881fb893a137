package merese.cli;

import java.util.List;
import java.util.Optional;
import merese.answer.CitedSource;
import merese.answer.Citing;
import merese.answer.json.AnswerJson;
import merese.answer.written.Harmless;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.shelf.Shelf;

/** Cites one source. */
final class CiteCommand extends LibraryCommand {
  private final Given<String> source =
      optionalWord(
          String.class, "SOURCE", "The key of an edition; key#part for an essay or entry in it.");

  private final Given<List<String>> place =
      optionalWords("LOCATOR", "The place cited, such as \"pl. XII, fig. 3\".");

  private final Given<String> part =
      option(String.class, "ID", "The part of the edition, as after the # of key#part.", "--part");
  private final CitationOptions citing = new CitationOptions(this);
  private final Given<String> form =
      option(
          String.class,
          "ONE",
          "note, short or entry: that one alone, for pasting. Without this, all three.",
          "--form");
  private final Given<Boolean> json = flag("Print the whole answer as JSON.", "--json");

  CiteCommand(Context context) {
    super(
        context,
        "Cite a source: as a note, as a short note and in a bibliography.",
        "merese cite quenby-1949 \"pl. 31\"",
        "merese cite osmere-1988#feet \"p. 7\" --style chicago-notes-bibliography",
        "merese cite tressick-1954 \"p. 88, fig. 61\" --form note --as html");
  }

  @Override
  int run() {
    if (citing.asksForStyles()) {
      CitationOptions.printStyles(context());
      return ExitCode.DONE;
    }
    String typed = source();
    Output output = citing.form().output();
    Optional<CiteForm> only = only();
    List<Locator> locators = locators();
    try (Shelf shelf = openShelf()) {
      Citations citations = citing.citations(shelf);
      CitedSource cited = shelf.ask(s -> Citing.answer(s, typed, locators, citations, output));
      if (json.isSet()) {
        AnswerJson.print(context().out(), cited);
      } else if (only.isPresent()) {
        context().out().println(only.get().of(cited));
        cited.remarks().forEach(r -> ErrorLines.print(context(), Harmless.words(r)));
      } else {
        print(cited, output);
      }
    }
    return ExitCode.DONE;
  }

  private String source() {
    if (source.value().isEmpty()) {
      throw CommandException.wrongUse("a SOURCE is missing; give the key of an edition");
    }
    String typed = source.value().get();
    if (part.value().isEmpty()) {
      return typed;
    }
    if (typed.indexOf('#') >= 0) {
      throw CommandException.wrongUse(
          "\"" + typed + "\" names a part already; leave out --part or the # and what follows it");
    }
    return typed + "#" + part.value().get();
  }

  private List<Locator> locators() {
    if (place.value().isEmpty() || place.value().get().isEmpty()) {
      return List.of();
    }
    try {
      return List.of(Locator.parse(String.join(" ", place.value().get())));
    } catch (LocatorException e) {
      throw CommandException.wrongUse(e.getMessage());
    }
  }

  private Optional<CiteForm> only() {
    if (form.value().isEmpty()) {
      return Optional.empty();
    }
    Optional<CiteForm> known = CiteForm.named(form.value().get());
    if (known.isEmpty()) {
      throw CommandException.wrongUse(
          "--form: \"" + form.value().get() + "\" is neither note, short nor entry");
    }
    return known;
  }

  private void print(CitedSource cited, Output output) {
    CiteText text = new CiteText(context(), output);
    for (CiteForm each : CiteForm.values()) {
      text.line(each.label(), each.of(cited));
    }
    CiteForm.editions(cited).ifPresent(words -> text.line("Edition", output.literal(words)));
    cited.remarks().forEach(remark -> text.line("Remark", output.literal(remark)));
    text.end();
  }
}
