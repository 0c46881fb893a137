package merese.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import merese.answer.Script;
import merese.shelf.Shelf;

/** Reads the script that an option names. */
final class ScriptFile {
  private ScriptFile() {}

  static Script read(Context context, Path typed, Shelf shelf) throws IOException {
    try {
      String text = Files.readString(context.resolve(typed), StandardCharsets.UTF_8);
      return Script.read(text, typed.toString(), shelf);
    } catch (CharacterCodingException e) {
      throw new CommandException(typed + " is not UTF-8 text; save it as UTF-8", e);
    }
  }
}
