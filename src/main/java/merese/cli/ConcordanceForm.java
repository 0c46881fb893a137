package merese.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Locale;
import java.util.Optional;
import merese.answer.concordance.Concordance;

/** The forms that a concordance is written in. */
enum ConcordanceForm {
  TEXT {
    @Override
    String write(Concordance answer, Screen screen) {
      StringWriter text = new StringWriter();
      PrintWriter out = new PrintWriter(text);
      new ConcordanceText(new Page(out, screen), screen.width()).print(answer);
      out.flush();
      return text.toString();
    }
  },
  MARKDOWN {
    @Override
    String write(Concordance answer, Screen screen) {
      return ConcordanceMarkdown.of(answer);
    }
  },
  HTML {
    @Override
    String write(Concordance answer, Screen screen) {
      return ConcordanceHtml.of(answer);
    }
  },
  CSV {
    @Override
    String write(Concordance answer, Screen screen) throws IOException {
      return ConcordanceCsv.of(answer);
    }
  };

  static Optional<ConcordanceForm> named(String name) {
    for (ConcordanceForm form : values()) {
      if (form.name().toLowerCase(Locale.ROOT).equals(name)) {
        return Optional.of(form);
      }
    }
    return Optional.empty();
  }

  /** The whole of it, with a newline at the end. */
  abstract String write(Concordance answer, Screen screen) throws IOException;
}
