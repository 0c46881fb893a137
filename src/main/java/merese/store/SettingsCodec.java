package merese.store;

import merese.model.LibrarySettings;

/** The file that makes a folder a library. */
final class SettingsCodec implements Codec<LibrarySettings> {
  static final SettingsCodec SETTINGS = new SettingsCodec();

  private SettingsCodec() {}

  /**
   * Refuses a layout of a later program before anything else in the file is looked at.
   *
   * @throws LibraryException where it is later
   */
  static void requireKnownFormat(Source source, Json.Obj root) {
    Json format = root.get("format");
    if (format instanceof Json.Word word && word.isNumber()) {
      int number = Scalars.whole(word.spelling()).orElse(0);
      if (number > LibrarySettings.FORMAT) {
        throw LibraryException.ofNewerProgram(
            source.problem(
                format.start(),
                "",
                "this library was made by a newer merese: its format is "
                    + number
                    + ", and this one knows "
                    + LibrarySettings.FORMAT,
                "use that newer merese",
                Problem.Severity.ERROR));
      }
      if (number < 1) {
        throw source.error(
            format.start(),
            word.spelling() + " is not a format of a library",
            "write " + LibrarySettings.FORMAT);
      }
    }
  }

  @Override
  public LibrarySettings read(Fields in) {
    return new LibrarySettings(
        in.number("format"),
        in.text("title"),
        in.text("language"),
        in.optionalText("style"),
        in.optionalObject("dateProfile", DateSettingsCodec.DATES));
  }

  @Override
  public void write(LibrarySettings settings, ObjectBuilder out) {
    out.number("format", settings.format());
    out.text("title", settings.title());
    out.text("language", settings.language());
    out.text("style", settings.style());
    out.object("dateProfile", settings.dateProfile(), DateSettingsCodec.DATES);
  }
}
