package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import merese.answer.CitedSource;
import merese.answer.CitedSource.OneEdition;

/** Which of a source's citations is printed, alone and fit for pasting. */
enum CiteForm {
  NOTE("Note") {
    @Override
    String of(CitedSource cited) {
      return cited.note();
    }
  },
  SHORT("Short note") {
    @Override
    String of(CitedSource cited) {
      return cited.shortNote();
    }
  },
  ENTRY("Bibliography") {
    @Override
    String of(CitedSource cited) {
      return cited.entry();
    }
  };

  private final String label;

  CiteForm(String label) {
    this.label = label;
  }

  abstract String of(CitedSource cited);

  String label() {
    return label;
  }

  static Optional<CiteForm> named(String name) {
    for (CiteForm form : values()) {
      if (form.name().toLowerCase(Locale.ROOT).equals(name)) {
        return Optional.of(form);
      }
    }
    return Optional.empty();
  }

  /** Which edition it is, among how many; empty where there is one. */
  static Optional<String> editions(CitedSource cited) {
    if (cited.edition().isEmpty()) {
      return Optional.empty();
    }
    List<String> others = new ArrayList<>();
    for (OneEdition other : cited.others()) {
      others.add(other.key() + " (" + other.words() + ")");
    }
    return Optional.of(
        cited.edition().get().words()
            + ": one of "
            + (others.size() + 1)
            + " in this library, beside "
            + String.join("; ", others));
  }
}
