package merese.store;

import merese.model.Mine;
import merese.model.Mine.Coinage;
import merese.model.Mine.Experience;
import merese.model.Mine.Preference;
import merese.model.Mine.SetAside;
import merese.model.Mine.Untraced;

/** The file of the user's own opinions. */
final class MineCodec implements Codec<Mine> {
  static final MineCodec MINE = new MineCodec();

  private MineCodec() {}

  @Override
  public Mine read(Fields in) {
    return new Mine(
        in.list("preferences", Preferences.CODEC),
        in.list("coinages", Coinages.CODEC),
        in.list("experience", Experiences.CODEC),
        in.list("untraced", UntracedWords.CODEC));
  }

  @Override
  public void write(Mine mine, ObjectBuilder out) {
    out.list("preferences", mine.preferences(), Preferences.CODEC);
    out.list("coinages", mine.coinages(), Coinages.CODEC);
    out.list("experience", mine.experience(), Experiences.CODEC);
    out.list("untraced", mine.untraced(), UntracedWords.CODEC);
  }

  private static final class Preferences implements Codec<Preference> {
    static final Preferences CODEC = new Preferences();

    @Override
    public Preference read(Fields in) {
      return new Preference(
          in.text("concept"),
          in.text("label"),
          in.optionalText("reason"),
          in.list("setAside", SetAsides.CODEC),
          in.optionalDate("on"));
    }

    @Override
    public void write(Preference preference, ObjectBuilder out) {
      out.text("concept", preference.concept());
      out.text("label", preference.label());
      out.text("reason", preference.reason());
      out.list("setAside", preference.setAside(), SetAsides.CODEC);
      out.date("on", preference.on());
    }
  }

  private static final class SetAsides implements Codec<SetAside> {
    static final SetAsides CODEC = new SetAsides();

    @Override
    public SetAside read(Fields in) {
      return new SetAside(in.text("label"), in.optionalText("reason"));
    }

    @Override
    public void write(SetAside setAside, ObjectBuilder out) {
      out.text("label", setAside.label());
      out.text("reason", setAside.reason());
    }
  }

  private static final class Coinages implements Codec<Coinage> {
    static final Coinages CODEC = new Coinages();

    @Override
    public Coinage read(Fields in) {
      return new Coinage(
          in.text("label"),
          in.text("concept"),
          in.optionalText("coiner"),
          in.optionalDate("on"),
          in.optionalText("evidence"));
    }

    @Override
    public void write(Coinage coinage, ObjectBuilder out) {
      out.text("label", coinage.label());
      out.text("concept", coinage.concept());
      out.text("coiner", coinage.coiner());
      out.date("on", coinage.on());
      out.text("evidence", coinage.evidence());
    }
  }

  private static final class Experiences implements Codec<Experience> {
    static final Experiences CODEC = new Experiences();

    @Override
    public Experience read(Fields in) {
      return new Experience(
          in.text("concept"),
          in.code("kind", NoteCodec.CLAIM_KIND),
          in.text("words"),
          in.optionalNumber("pieces"),
          in.optionalNumber("until"));
    }

    @Override
    public void write(Experience experience, ObjectBuilder out) {
      out.text("concept", experience.concept());
      out.code("kind", experience.kind());
      out.text("words", experience.words());
      out.number("pieces", experience.pieces());
      out.number("until", experience.until());
    }
  }

  private static final class UntracedWords implements Codec<Untraced> {
    static final UntracedWords CODEC = new UntracedWords();

    @Override
    public Untraced read(Fields in) {
      return new Untraced(in.text("word"), in.optionalText("words"), in.optionalDate("on"));
    }

    @Override
    public void write(Untraced untraced, ObjectBuilder out) {
      out.text("word", untraced.word());
      out.text("words", untraced.words());
      out.date("on", untraced.on());
    }
  }
}
