package merese.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;
import merese.model.KeyedKind;
import merese.model.KeyedKind.Allowed;
import merese.model.Nearest;
import merese.model.OwnObject.Observation.Sense;

/** The key to look-alikes. A kind's statements are texts, so that one stands on one line. */
final class CharacterKeyCodec implements Codec<CharacterKey> {
  static final CharacterKeyCodec KEY = new CharacterKeyCodec();

  private static final Codes<Sense> SENSE = new Codes<>("a sense", Sense.values());

  private CharacterKeyCodec() {}

  @Override
  public CharacterKey read(Fields in) {
    String basis = in.text("basis");
    List<KeyCharacter> characters = in.list("characters", Characters.CODEC);
    return new CharacterKey(basis, characters, in.list("kinds", new Kinds(characters)));
  }

  @Override
  public void write(CharacterKey key, ObjectBuilder out) {
    out.text("basis", key.basis());
    out.allOf("characters", key.characters(), Characters.CODEC);
    out.allOf("kinds", key.kinds(), new Kinds(key.characters()));
  }

  private static final class Characters implements Codec<KeyCharacter> {
    static final Characters CODEC = new Characters();

    @Override
    public KeyCharacter read(Fields in) {
      return new KeyCharacter(
          in.text("id"),
          in.text("label"),
          in.text("question"),
          in.text("look"),
          in.codes("senses", SENSE),
          in.texts("alsoCalled"),
          in.flag("counted", false),
          in.list("values", Values.CODEC));
    }

    @Override
    public void write(KeyCharacter character, ObjectBuilder out) {
      out.text("id", character.id());
      out.text("label", character.label());
      out.text("question", character.question());
      out.text("look", character.look());
      List<String> senses = new ArrayList<>();
      character.senses().forEach(s -> senses.add(s.code()));
      out.texts("senses", senses);
      out.texts("alsoCalled", character.alsoCalled());
      out.flag("counted", character.counted(), false);
      out.list("values", character.values(), Values.CODEC);
    }
  }

  private static final class Values implements Codec<KeyCharacter.Value> {
    static final Values CODEC = new Values();

    @Override
    public KeyCharacter.Value read(Fields in) {
      return new KeyCharacter.Value(
          in.text("id"), in.text("label"), in.texts("words"), in.optionalCode("sense", SENSE));
    }

    @Override
    public void write(KeyCharacter.Value value, ObjectBuilder out) {
      out.text("id", value.id());
      out.text("label", value.label());
      out.texts("words", value.words());
      out.code("sense", value.sense());
    }
  }

  private static final class Kinds implements Codec<KeyedKind> {
    private final Statements statements;

    Kinds(List<KeyCharacter> characters) {
      this.statements = new Statements(characters);
    }

    @Override
    public KeyedKind read(Fields in) {
      return new KeyedKind(in.text("concept"), in.list("allows", statements));
    }

    @Override
    public void write(KeyedKind kind, ObjectBuilder out) {
      out.text("concept", kind.concept());
      out.list("allows", kind.allows(), statements);
    }
  }

  private static final class Statements implements Codec<Allowed> {
    private final Map<String, KeyCharacter> characters = new HashMap<>();

    Statements(List<KeyCharacter> characters) {
      characters.forEach(c -> this.characters.putIfAbsent(c.id(), c));
    }

    /** A statement is always a text; an object is refused as one. */
    @Override
    public Allowed read(Fields in) {
      throw new IllegalArgumentException("an object stands here; write a text, as in " + example());
    }

    @Override
    public void write(Allowed allowed, ObjectBuilder out) {
      throw new IllegalStateException("a statement is a text");
    }

    @Override
    public Allowed fromText(String text) {
      Allowed allowed = Allowed.parse(text);
      KeyCharacter character = characters.get(allowed.character());
      if (character == null) {
        List<String> near =
            Nearest.to(allowed.character(), characters.keySet().stream().sorted().toList(), 1);
        throw new IllegalArgumentException(
            "there is no character "
                + Quote.of(allowed.character())
                + "; "
                + (near.isEmpty()
                    ? "correct the name, or add the character"
                    : "did you mean " + Quote.of(near.get(0)) + "?"));
      }
      allowed.values().forEach(character::requireStatement);
      return allowed;
    }

    @Override
    public String asText(Allowed allowed) {
      return allowed.written();
    }

    @Override
    public String shape() {
      return "a text";
    }

    @Override
    public String example() {
      return "\"join: felt, seen\"";
    }
  }
}
