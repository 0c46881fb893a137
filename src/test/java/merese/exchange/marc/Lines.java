package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import merese.exchange.Aspect;
import merese.model.Edition.Imprint;
import merese.model.ReceivedRecord;
import merese.model.ReceivedRecord.Field;
import merese.model.Work;

/** Records in lines: name, space, value ("245 10 $aGlass"), as the fixtures have them. */
final class Lines {
  private Lines() {}

  static ReceivedRecord record(List<String> lines) {
    List<Field> fields = new ArrayList<>();
    for (String line : lines) {
      boolean control = line.startsWith("LDR") || line.startsWith("00");
      int end = control ? 3 : 6;
      fields.add(new Field(line.substring(0, end), line.substring(end + 1)));
    }
    return new MarcRecord(MarcRecord.of(new ReceivedRecord("marc", "", "", fields)).fields())
        .received();
  }

  static ReceivedRecord record(String... lines) {
    return record(List.of(lines));
  }

  /** A book with a leader and a title. */
  static ReceivedRecord book(String... lines) {
    List<String> all = new ArrayList<>(List.of("LDR 00000nam a2200000 a 4500"));
    all.addAll(List.of(lines));
    return record(all);
  }

  /** What is understood, a part a line, as "title: Glass". */
  static List<String> said(Work work, List<String> remarks) {
    List<String> said = new ArrayList<>();
    Imprint imprint = work.editions().get(0).imprint();
    for (Aspect aspect : Aspect.values()) {
      if (!aspect.isSilent(work)) {
        said.add(aspect.words() + ": " + aspect.printed(work));
      }
      if (aspect == Aspect.STATEMENT) {
        number("number", imprint.number(), said);
      }
      if (aspect == Aspect.DATE) {
        number("year", imprint.year(), said);
      }
    }
    remarks.forEach(remark -> said.add("remark: " + remark));
    return said;
  }

  private static void number(String name, OptionalInt number, List<String> to) {
    number.ifPresent(n -> to.add(name + ": " + n));
  }
}
