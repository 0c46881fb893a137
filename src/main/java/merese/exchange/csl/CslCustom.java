package merese.exchange.csl;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.model.ReceivedRecord;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * What the variables of CSL cannot say, in the object that CSL leaves to programs: {@code "custom":
 * {"merese": {"kind": "sale-catalogue", …}}}. A part of a description stands there only where the
 * variables alone would be read as something else.
 */
final class CslCustom {
  static final String OURS = "merese";

  private CslCustom() {}

  /** An item with what its variables leave unsaid of a work; the rest of its own custom stays. */
  static Members added(Members item, Work work) {
    Members bare = with(item, new Members(List.of()));
    Work plain = ItemWork.of(bare, nothing());
    List<Member> ours = new ArrayList<>();
    for (Aspect aspect : Aspect.values()) {
      if (!aspect.isSame(plain, work)) {
        ours.add(new Member(PartsAsJson.name(aspect), PartsAsJson.of(aspect, work)));
      }
    }
    return ours.isEmpty() ? bare : with(bare, new Members(ours));
  }

  private static ReceivedRecord nothing() {
    return new ReceivedRecord(CslMeaning.FORMAT, "", "", List.of());
  }

  /** For a part of a source, of which only the kind is told. */
  static Members withKind(Members item, SourceKind kind) {
    boolean said = CslKind.of(item.text("type").orElse("")) == kind;
    return said
        ? item
        : with(
            item,
            new Members(List.of(new Member(PartsAsJson.name(Aspect.KIND), Json.of(kind.code())))));
  }

  /** Puts ours in the place of what was there; nothing is left of it where ours is empty. */
  private static Members with(Members item, Members ours) {
    List<Member> members = new ArrayList<>();
    List<Member> custom = new ArrayList<>();
    int at = -1;
    for (Member member : item.members()) {
      boolean isCustom = member.name().equals(Variables.CUSTOM);
      if (isCustom && at < 0 && member.value() instanceof Members old) {
        at = members.size();
        old.members().stream().filter(m -> !m.name().equals(OURS)).forEach(custom::add);
      } else {
        members.add(member);
      }
    }
    if (!ours.members().isEmpty()) {
      custom.add(new Member(OURS, ours));
    }
    if (!custom.isEmpty()) {
      members.add(at < 0 ? members.size() : at, new Member(Variables.CUSTOM, new Members(custom)));
    }
    return new Members(members);
  }

  /**
   * The work as the variables and what is our own have it together. Where another program has
   * changed a variable since, that is what counts.
   */
  static Work heeded(Members item, Work plain, List<String> remarks) {
    Optional<Members> ours =
        item.get(Variables.CUSTOM)
            .filter(Members.class::isInstance)
            .flatMap(c -> ((Members) c).get(OURS))
            .filter(Members.class::isInstance)
            .map(Members.class::cast);
    if (ours.isEmpty()) {
      return plain;
    }
    Work full = plain;
    Set<Aspect> named = EnumSet.noneOf(Aspect.class);
    for (Aspect aspect : Aspect.values()) {
      Optional<Work> read =
          ours.get()
              .get(PartsAsJson.name(aspect))
              .flatMap(v -> PartsFromJson.read(aspect, v, plain));
      if (read.isPresent()) {
        full = aspect.taken(full, read.get());
        named.add(aspect);
      }
    }
    Members written =
        ItemMaker.make(new Outgoing(full, full.editions().get(0), Optional.empty(), List.of()));
    Work heeded = plain;
    for (Aspect aspect : named) {
      if (isAsWritten(aspect, item, written)) {
        heeded = aspect.taken(heeded, full);
      } else if (!aspect.isSame(plain, full)) {
        remarks.add(
            "the "
                + aspect.words()
                + " was changed by another program after this program wrote it; taken as it"
                + " stands there");
      }
    }
    return heeded;
  }

  private static boolean isAsWritten(Aspect aspect, Members item, Members written) {
    String type = item.text("type").orElse("");
    for (String variable : Variables.feeding(aspect, type)) {
      if (!item.get(variable).equals(written.get(variable))) {
        return false;
      }
    }
    return true;
  }
}
