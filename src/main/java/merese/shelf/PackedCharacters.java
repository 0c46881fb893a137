package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import merese.model.CharacterKey;
import merese.model.KeyCharacter;
import merese.model.KeyedKind;
import merese.model.OwnObject.Observation.Sense;

/** The key to look-alikes as the index holds it. */
final class PackedCharacters {
  private static final Sense[] SENSES = Sense.values();

  private PackedCharacters() {}

  static byte[] pack(CharacterKey key) {
    return new Packer()
        .text(key.basis())
        .list(key.characters(), PackedCharacters::character)
        .list(key.kinds(), PackedCharacters::kind)
        .toBytes();
  }

  private static void character(Packer to, KeyCharacter character) {
    to.text(character.id()).text(character.label());
    to.text(character.question()).text(character.look());
    to.list(character.senses(), Packer::constant);
    to.texts(character.alsoCalled()).flag(character.counted());
    to.list(
        character.values(),
        (p, v) -> p.text(v.id()).text(v.label()).texts(v.words()).constant(v.sense()));
  }

  private static void kind(Packer to, KeyedKind kind) {
    to.text(kind.concept());
    to.list(kind.allows(), (p, allowed) -> p.text(allowed.character()).texts(allowed.values()));
  }

  static CharacterKey unpack(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    String basis = from.text();
    List<KeyCharacter> characters = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      characters.add(
          new KeyCharacter(
              from.text(),
              from.text(),
              from.text(),
              from.text(),
              senses(from),
              from.texts(),
              from.flag(),
              values(from)));
    }
    List<KeyedKind> kinds = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      kinds.add(new KeyedKind(from.text(), allows(from)));
    }
    return new CharacterKey(basis, characters, kinds);
  }

  private static List<Sense> senses(Unpacker from) {
    List<Sense> senses = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      senses.add(from.constant(SENSES));
    }
    return senses;
  }

  private static List<KeyCharacter.Value> values(Unpacker from) {
    List<KeyCharacter.Value> values = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      values.add(
          new KeyCharacter.Value(
              from.text(), from.text(), from.texts(), from.optionalConstant(SENSES)));
    }
    return values;
  }

  private static List<KeyedKind.Allowed> allows(Unpacker from) {
    List<KeyedKind.Allowed> allows = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      allows.add(new KeyedKind.Allowed(from.text(), from.texts()));
    }
    return allows;
  }
}
