package merese.store;

import merese.model.DateSettings;
import merese.model.DateWord;

/** How dates in words are read: "default", or what differs from it. */
final class DateSettingsCodec implements Codec<DateSettings> {
  static final DateSettingsCodec DATES = new DateSettingsCodec();

  private DateSettingsCodec() {}

  @Override
  public DateSettings read(Fields in) {
    return new DateSettings(
        in.optionalText("name"),
        in.optionalNumber("circaYears"),
        in.optionalNumber("circaMonths"),
        in.optionalNumber("circaDays"),
        in.optionalNumber("centuryFirstYear"),
        in.optionalNumber("yearsBeyondEnd"),
        in.list("parts", Words.CODEC),
        in.list("periods", Words.CODEC));
  }

  @Override
  public void write(DateSettings dates, ObjectBuilder out) {
    out.text("name", dates.name());
    out.number("circaYears", dates.circaYears());
    out.number("circaMonths", dates.circaMonths());
    out.number("circaDays", dates.circaDays());
    out.number("centuryFirstYear", dates.centuryFirstYear());
    out.number("yearsBeyondEnd", dates.yearsBeyondEnd());
    out.list("parts", dates.parts(), Words.CODEC);
    out.list("periods", dates.periods(), Words.CODEC);
  }

  @Override
  public DateSettings fromText(String text) {
    return text.equals(DateSettings.DEFAULT_NAME) ? DateSettings.DEFAULT : null;
  }

  @Override
  public String asText(DateSettings dates) {
    return dates.equals(DateSettings.DEFAULT) ? DateSettings.DEFAULT_NAME : null;
  }

  @Override
  public String shape() {
    return "\"default\" or an object with rules for dates";
  }

  @Override
  public String example() {
    return "\"default\", or what differs from it, as in { \"circaYears\": 10 }";
  }

  private static final class Words implements Codec<DateWord> {
    static final Words CODEC = new Words();

    @Override
    public DateWord read(Fields in) {
      return new DateWord(
          in.text("word"),
          in.number("from"),
          in.number("to"),
          in.optionalNumber("outerFrom"),
          in.optionalNumber("outerTo"));
    }

    @Override
    public void write(DateWord word, ObjectBuilder out) {
      out.text("word", word.word());
      out.number("from", word.from());
      out.number("to", word.to());
      out.number("outerFrom", word.outerFrom());
      out.number("outerTo", word.outerTo());
    }
  }
}
