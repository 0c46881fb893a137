package merese.exchange.marc;

import static merese.exchange.Aspect.ARCHIVE;
import static merese.exchange.Aspect.CONTAINER;
import static merese.exchange.Aspect.DATE;
import static merese.exchange.Aspect.IDENTIFIERS;
import static merese.exchange.Aspect.KIND;
import static merese.exchange.Aspect.LANGUAGE;
import static merese.exchange.Aspect.LINEAGE;
import static merese.exchange.Aspect.NOTED_AS;
import static merese.exchange.Aspect.OCCASION;
import static merese.exchange.Aspect.ONLINE;
import static merese.exchange.Aspect.OTHER_TITLES;
import static merese.exchange.Aspect.PEOPLE;
import static merese.exchange.Aspect.PLACES;
import static merese.exchange.Aspect.PUBLISHER;
import static merese.exchange.Aspect.SERIES;
import static merese.exchange.Aspect.STATEMENT;
import static merese.exchange.Aspect.TITLE;
import static merese.exchange.Aspect.VOLUMES;

import java.util.EnumSet;
import java.util.Set;
import merese.exchange.Aspect;
import merese.model.SourceKind;

/**
 * Which parts of a description a field has a say in; none for a field that is not understood. The
 * leader and field 008 have theirs by position, and are not here.
 */
final class Feeds {
  private Feeds() {}

  /**
   * @param kind what the record is read as
   */
  static Set<Aspect> of(MarcField field, MarcRecord record, SourceKind kind) {
    if (field.control().isPresent()) {
      return none();
    }
    return switch (field.tag()) {
      case "020", "022" -> EnumSet.of(IDENTIFIERS);
      case "024" -> IdentifierMeaning.isDoi(field) ? EnumSet.of(IDENTIFIERS) : none();
      case "041" -> EnumSet.of(LANGUAGE);
      case "100", "110", "111", "700", "710", "711" ->
          PeopleMeaning.of(field, record).isEmpty() ? none() : EnumSet.of(PEOPLE);
      case "245" -> EnumSet.of(TITLE);
      case "246" -> TitleMeaning.isTitleOfWhole(field) ? EnumSet.of(OTHER_TITLES) : none();
      case "250" -> EnumSet.of(STATEMENT);
      case "260", "264" -> EnumSet.of(PLACES, PUBLISHER, DATE);
      case "300" -> EnumSet.of(VOLUMES);
      case "440", "490", "830" -> EnumSet.of(SERIES);
      case "500" ->
          ImprintMeaning.isForCitation(field)
              ? EnumSet.of(NOTED_AS)
              : DescentMeaning.isOfReprint(field) ? EnumSet.of(LINEAGE) : none();
      case "502" -> ThesisNote.isOfThesisItself(field) ? EnumSet.of(ARCHIVE, KIND) : none();
      case "518" -> WhereMeaning.isLocal(field) ? EnumSet.of(OCCASION) : none();
      case "534" -> EnumSet.of(LINEAGE);
      case "655" -> KindMeaning.own(field).isPresent() ? EnumSet.of(KIND) : none();
      case "773" ->
          WhereMeaning.host(record).filter(field::equals).isPresent() ? host(field) : none();
      case "852" -> WhereMeaning.isArchive(field, kind) ? EnumSet.of(ARCHIVE) : none();
      case "856" -> WhereMeaning.isOfSource(field) ? EnumSet.of(ONLINE) : none();
      case "857" -> EnumSet.of(ONLINE);
      default -> none();
    };
  }

  private static Set<Aspect> none() {
    return EnumSet.noneOf(Aspect.class);
  }

  private static Set<Aspect> host(MarcField field) {
    Set<Aspect> aspects = EnumSet.of(CONTAINER);
    if (field.has('x')) {
      aspects.add(IDENTIFIERS);
    }
    return aspects;
  }
}
