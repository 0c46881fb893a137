package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Claim;
import merese.model.Mine;
import merese.model.OwnObject;

/** The user's own words and pieces as the index holds them. */
final class PackedMine {
  private static final Claim.Kind[] KINDS = Claim.Kind.values();
  private static final OwnObject.Evidence.Kind[] EVIDENCE = OwnObject.Evidence.Kind.values();
  private static final OwnObject.Observation.Sense[] SENSES = OwnObject.Observation.Sense.values();

  private PackedMine() {}

  static byte[] pack(Mine mine) {
    Packer to = new Packer();
    to.list(mine.preferences(), PackedMine::preference);
    to.list(mine.coinages(), PackedMine::coinage);
    to.list(mine.experience(), PackedMine::experience);
    to.list(mine.untraced(), PackedMine::untraced);
    return to.toBytes();
  }

  private static void preference(Packer to, Mine.Preference preference) {
    to.text(preference.concept()).text(preference.label()).text(preference.reason());
    to.list(preference.setAside(), (p, aside) -> p.text(aside.label()).text(aside.reason()));
    to.text(PackedNote.date(preference.on()));
  }

  private static void coinage(Packer to, Mine.Coinage coinage) {
    to.text(coinage.label()).text(coinage.concept()).text(coinage.coiner());
    to.text(PackedNote.date(coinage.on())).text(coinage.evidence());
  }

  private static void experience(Packer to, Mine.Experience experience) {
    to.text(experience.concept()).constant(experience.kind()).text(experience.words());
    to.number(experience.pieces()).number(experience.until());
  }

  private static void untraced(Packer to, Mine.Untraced untraced) {
    to.text(untraced.word()).text(untraced.words()).text(PackedNote.date(untraced.on()));
  }

  static Mine unpack(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    List<Mine.Preference> preferences = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      preferences.add(
          new Mine.Preference(
              from.text(),
              from.text(),
              from.optionalText(),
              setAside(from),
              PackedNote.date(from)));
    }
    List<Mine.Coinage> coinages = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      coinages.add(
          new Mine.Coinage(
              from.text(),
              from.text(),
              from.optionalText(),
              PackedNote.date(from),
              from.optionalText()));
    }
    List<Mine.Experience> experience = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      experience.add(
          new Mine.Experience(
              from.text(),
              from.constant(KINDS),
              from.text(),
              from.optionalNumber(),
              from.optionalNumber()));
    }
    List<Mine.Untraced> untraced = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      untraced.add(new Mine.Untraced(from.text(), from.optionalText(), PackedNote.date(from)));
    }
    return new Mine(preferences, coinages, experience, untraced);
  }

  private static List<Mine.SetAside> setAside(Unpacker from) {
    List<Mine.SetAside> setAside = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      setAside.add(new Mine.SetAside(from.text(), from.optionalText()));
    }
    return setAside;
  }

  static byte[] pack(OwnObject object) {
    Packer to = new Packer().text(object.ref()).text(object.title());
    to.text(object.measurements()).text(object.provenance()).text(object.place());
    to.list(object.evidence(), PackedMine::evidence);
    to.list(object.observations(), PackedMine::observation);
    to.list(
        object.photographs(),
        (p, photo) -> p.text(photo.id()).text(photo.file()).text(photo.words()).text(photo.turn()));
    return to.toBytes();
  }

  private static void evidence(Packer to, OwnObject.Evidence evidence) {
    to.text(evidence.concept()).constant(evidence.kind());
    to.text(evidence.words()).text(evidence.photo());
  }

  private static void observation(Packer to, OwnObject.Observation observation) {
    to.text(observation.part()).text(observation.character()).text(observation.value());
    to.constant(observation.sense()).flag(observation.found()).text(observation.photo());
  }

  static OwnObject unpackObject(byte[] bytes) {
    Unpacker from = new Unpacker(bytes);
    String ref = from.text();
    String title = from.text();
    Optional<String> measurements = from.optionalText();
    Optional<String> provenance = from.optionalText();
    Optional<String> place = from.optionalText();
    List<OwnObject.Evidence> evidence = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      evidence.add(
          new OwnObject.Evidence(
              from.text(), from.constant(EVIDENCE), from.optionalText(), from.optionalText()));
    }
    List<OwnObject.Observation> observations = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      observations.add(
          new OwnObject.Observation(
              from.text(),
              from.text(),
              from.optionalText(),
              from.constant(SENSES),
              from.flag(),
              from.optionalText()));
    }
    List<OwnObject.Photograph> photographs = new ArrayList<>();
    for (int left = from.number(); left > 0; left--) {
      photographs.add(
          new OwnObject.Photograph(
              from.text(), from.text(), from.optionalText(), from.optionalText()));
    }
    return new OwnObject(
        ref, title, measurements, provenance, place, evidence, observations, photographs);
  }
}
