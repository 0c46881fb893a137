package merese.desk.note;

import java.util.ArrayList;
import java.util.List;
import merese.model.Coded;

/** Choices of a form that stand for a closed set of words. */
final class Codes {
  private Codes() {}

  /**
   * @throws WrongFieldException where the form was altered on its way
   */
  static <T extends Coded> T of(T[] values, String code, String field) {
    List<String> codes = new ArrayList<>();
    for (T value : values) {
      if (value.code().equals(code)) {
        return value;
      }
      codes.add(value.code());
    }
    throw new WrongFieldException(
        field, "this is one of " + String.join(", ", codes) + ", not \"" + code + "\"");
  }
}
