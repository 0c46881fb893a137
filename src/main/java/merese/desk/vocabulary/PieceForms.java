package merese.desk.vocabulary;

import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import merese.change.objects.PieceRequest;
import merese.change.objects.PieceRequest.Particulars;
import merese.change.vocabulary.ConceptNames;
import merese.desk.web.FormException;
import merese.desk.web.Site;
import merese.desk.web.Typed;
import merese.exchange.picture.PictureCopy;
import merese.model.OwnObject.Evidence;
import merese.model.OwnObject.Observation;
import merese.model.OwnObject.Observation.Sense;

/** What the forms on pieces ask for. */
final class PieceForms {
  private final Typed typed;

  PieceForms(Typed typed) {
    this.typed = typed;
  }

  PieceRequest add() {
    return new PieceRequest.Add(
        required("ref", "write what you call it, such as d-23"), particulars());
  }

  PieceRequest describe(String ref) {
    return new PieceRequest.Describe(ref, particulars());
  }

  private Particulars particulars() {
    return new Particulars(
        Optional.of(required("title", "say in a line what it is")),
        given("measurements"),
        given("provenance"),
        given("place"));
  }

  PieceRequest observe(String ref) {
    String outcome = typed.get("found");
    boolean like = outcome.equals("like");
    boolean there = outcome.equals("there");
    boolean notFound = outcome.equals("no");
    if (!like && !there && !notFound) {
      throw new FormException(
          "found", "say what came of it: what it is like, that it is there, or that it is not");
    } else if (like && given("value").isEmpty()) {
      throw new FormException(
          "value", "say what it is like; or choose “it is there” or “looked for and not found”");
    } else if (notFound && given("value").isPresent()) {
      throw new FormException(
          "value", "what was looked for and not found has no value; leave that empty");
    } else if (there && given("value").isPresent()) {
      throw new FormException(
          "value", "what it is like is written here; choose “found: what it is like”, or empty it");
    }
    return new PieceRequest.Observe(
        ref,
        new Observation(
            required("part", "write which part was looked at"),
            required("character", "write what was looked for"),
            given("value"),
            typed.is("sense", "felt") ? Sense.FELT : Sense.SEEN,
            !notFound,
            given("photo")),
        typed.has("instead"));
  }

  PieceRequest show(String ref, ConceptNames names) {
    String concept =
        new ConceptForms(typed, names).concept("concept", required("concept", "name the concept"));
    Evidence.Kind kind =
        switch (typed.get("as")) {
          case "counter-example" -> Evidence.Kind.COUNTER_EXAMPLE;
          case "mixed" -> Evidence.Kind.MIXED;
          default -> Evidence.Kind.EXAMPLE;
        };
    return new PieceRequest.Show(ref, new Evidence(concept, kind, given("words"), given("photo")));
  }

  /**
   * @param file that was sent along; null for none
   */
  PieceRequest photograph(String ref, UploadedFile file, Site site) {
    Optional<String> named = given("name");
    boolean sent = file != null && file.size() > 0;
    if (sent == named.isPresent()) {
      throw new FormException(
          sent ? "name" : "file",
          sent
              ? "choose a file, or name one of the library’s pictures; not both"
              : "choose a file, or name one of the library’s pictures");
    }
    if (sent) {
      return photograph(ref, file.filename(), Path.of("sent"), Optional.of(copy(file)));
    }
    String name = named.orElseThrow();
    if (!site.hasPicture(name)) {
      throw new FormException(
          "name",
          "there is no picture “"
              + name
              + "” in the library’s folder “pictures”; write its path below that folder");
    }
    return photograph(ref, name, site.library().picture(name), Optional.empty());
  }

  private PieceRequest photograph(String ref, String name, Path file, Optional<PictureCopy> sent) {
    return new PieceRequest.Photograph(
        ref, name, file, given("id"), given("words"), given("turn"), sent);
  }

  private static PictureCopy copy(UploadedFile file) {
    try (InputStream in = file.content()) {
      return PictureCopy.of(in.readAllBytes(), file.filename());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Optional<String> given(String field) {
    String text = typed.get(field).replace("\r\n", "\n").strip();
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  private String required(String field, String lacking) {
    return given(field).orElseThrow(() -> new FormException(field, lacking));
  }
}
