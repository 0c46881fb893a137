package merese.exchange.csl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;

/**
 * An item as a received record, and back. Its id and type are those of the record; where one is not
 * a text, or comes twice, it is a field besides, as it stands.
 */
final class ItemRecord {
  private ItemRecord() {}

  static ReceivedRecord of(Members item) {
    boolean id = isPlain(item, "id");
    boolean type = isPlain(item, "type");
    List<Field> fields = new ArrayList<>(item.members().size());
    for (Member member : item.members()) {
      String name = member.name();
      if (!(id && name.equals("id")) && !(type && name.equals("type"))) {
        fields.add(new Field(name, FieldText.of(member.value())));
      }
    }
    return new ReceivedRecord(
        CslMeaning.FORMAT, whole(item.text("type")), whole(item.text("id")), fields);
  }

  /** Whether it comes once, as a text that can be stored. */
  private static boolean isPlain(Members item, String name) {
    Json found = null;
    for (Member member : item.members()) {
      if (member.name().equals(name)) {
        if (found != null) {
          return false;
        }
        found = member.value();
      }
    }
    return found instanceof Json.Text text
        && !text.value().isEmpty()
        && JsonText.whole(text.value()).equals(text.value());
  }

  private static String whole(Optional<String> text) {
    return text.map(JsonText::whole).orElse("");
  }

  /** With the id first and the type second. */
  static Members item(ReceivedRecord record) {
    List<Member> members = new ArrayList<>(record.fields().size() + 2);
    if (!record.id().isEmpty() && record.field("id").isEmpty()) {
      members.add(new Member("id", Json.of(record.id())));
    }
    if (!record.type().isEmpty() && record.field("type").isEmpty()) {
      members.add(new Member("type", Json.of(record.type())));
    }
    for (Field field : record.fields()) {
      members.add(new Member(field.name(), FieldText.read(field.value())));
    }
    return new Members(members);
  }
}
