package merese.exchange.csl;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.model.ReceivedRecord;
import merese.model.Work;

/** The item of a source as it goes out: as it came, but for what has been changed since. */
final class ItemUpdate {
  private ItemUpdate() {}

  static Members of(Outgoing source) {
    Members made = ItemMaker.make(source);
    if (source.part().isPresent()) {
      return CslCustom.withKind(made, source.work().kind());
    }
    Work now = source.work().withOnly(source.edition());
    Optional<ReceivedRecord> received =
        source.edition().received().stream()
            .filter(r -> r.format().equals(CslMeaning.FORMAT))
            .findFirst();
    Optional<CslMeaning> then = received.flatMap(CslMeaning::of);
    if (then.isEmpty()) {
      return CslCustom.added(made, now);
    }
    Set<Aspect> changed = Aspect.differing(now, then.get().work());
    Members came = ItemRecord.item(received.get());
    if (!changed.isEmpty() && ItemWork.wholeTitle(came).isEmpty()) {
      changed.add(Aspect.TITLE); // what it was supplied from may be what has changed
    }
    return changed.isEmpty() ? came : CslCustom.added(updated(came, made, changed), now);
  }

  /** The item as it came, with the variables behind what changed as the library has them. */
  private static Members updated(Members came, Members made, Set<Aspect> changed) {
    String type = came.text("type").orElse("");
    Set<String> anew = Variables.feeding(changed, type, made.text("type").orElse(""));
    List<Member> members = new ArrayList<>();
    Set<String> done = new HashSet<>();
    for (Member member : came.members()) {
      if (!anew.contains(member.name())) {
        members.add(member);
      } else if (done.add(member.name())) {
        made.get(member.name()).ifPresent(v -> members.add(new Member(member.name(), v)));
      }
    }
    for (Member member : made.members()) {
      if (anew.contains(member.name()) && done.add(member.name())) {
        members.add(member);
      }
    }
    return new Members(members);
  }
}
