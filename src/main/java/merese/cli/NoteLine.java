package merese.cli;

import java.util.List;
import java.util.Optional;
import merese.change.notes.TypedNote;
import merese.exchange.picture.PictureCopy;
import merese.model.Locator;
import merese.model.Naming;
import merese.model.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The options of one note in a sitting: those of {@code merese note} that it can need there. */
final class NoteLine extends Command implements TypedLine.Options {
  private static final int MOST_NEAR = 3;

  private final NoteOptions options = new NoteOptions(this);
  private final MeaningOptions meaning = new MeaningOptions(this);
  private final PhotoOption photo = new PhotoOption(this);

  private final Given<String> under =
      option(String.class, "FACET", "The heading that the term stands under.", "--under");

  private final Given<Boolean> again =
      flag("Write it though the same note is there already.", "--again");

  NoteLine(Context context) {
    super(context, "A note on a page: PLACE | TERM | TEXT, each as far as needed.");
  }

  @Override
  int run() {
    return ExitCode.DONE;
  }

  /** Reads the options, as {@link TypedLine} has them. */
  void read(List<String> given) {
    new CommandLine(spec()).setExpandAtFiles(false).parseArgs(given.toArray(String[]::new));
  }

  @Override
  public boolean takesValue(String name) {
    OptionSpec option = spec().findOption(name);
    if (option == null) {
      List<String> near = Nearest.to(name, names(), MOST_NEAR);
      throw CommandException.wrongUse(
          "there is no option "
              + name
              + (near.isEmpty()
                  ? "; help lists them"
                  : "; did you mean " + String.join(" or ", near) + "?"));
    }
    return option.arity().max() > 0;
  }

  /** All options, in the order of the help. */
  List<String> names() {
    return spec().options().stream()
        .map(OptionSpec::longestName)
        .filter(name -> !name.equals("--help"))
        .toList();
  }

  List<OptionSpec> all() {
    return spec().options().stream().filter(o -> !o.longestName().equals("--help")).toList();
  }

  Optional<String> facet() {
    return under.value();
  }

  boolean again() {
    return again.isSet();
  }

  Optional<PictureCopy> photo() {
    return photo.picture();
  }

  MeaningOptions meaning() {
    return meaning;
  }

  TypedNote note(Locator at, Naming naming, Optional<String> text, String by) {
    return new TypedNote(
        List.of(naming),
        options.where(at.printed(), !naming.printed().isBlank()),
        options.claims(),
        text.filter(t -> !t.isBlank()),
        options.reading(),
        options.part(),
        options.object(),
        by);
  }
}
