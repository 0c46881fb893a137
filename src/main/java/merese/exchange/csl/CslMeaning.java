package merese.exchange.csl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.SuppliedTitle;
import merese.exchange.csl.Json.Members;
import merese.exchange.identifier.Identifiers;
import merese.model.Identifier;
import merese.model.ReceivedRecord;
import merese.model.Work;

/**
 * What a received item says in the library's terms: a function of the record alone.
 *
 * <p>What is our own in it ({@link CslCustom}) is believed wherever the variables still are what we
 * write beside it.
 *
 * @param remarks what was noticed and taken as it stands
 */
record CslMeaning(Work work, List<String> remarks) {
  /** The name of the format. */
  static final String FORMAT = "csl-json";

  CslMeaning {
    remarks = List.copyOf(remarks);
  }

  /** Empty for what has neither a title nor a type, and so is no item. */
  static Optional<CslMeaning> of(ReceivedRecord record) {
    return of(ItemRecord.item(record), record);
  }

  static Optional<CslMeaning> of(Members item, ReceivedRecord record) {
    boolean hasTitle = ItemWork.wholeTitle(item).isPresent();
    if (!hasTitle && record.type().isBlank()) {
      return Optional.empty();
    }
    List<String> remarks = new ArrayList<>(ItemNames.remarks(item));
    Work work = CslCustom.heeded(item, ItemWork.of(item, record), remarks);
    if (!hasTitle) {
      remarks.add(SuppliedTitle.REMARK);
    }
    for (Identifier each : work.editions().get(0).imprint().identifiers()) {
      Identifiers.fault(each)
          .ifPresent(fault -> remarks.add(fault + "; recorded as it stands, as wrong in print"));
    }
    return Optional.of(new CslMeaning(work, remarks));
  }
}
