package merese.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Locale;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Runs a test, or each test of a class, with Turkish as the default locale, where the lower case of
 * "I" is a dotless "ı". For a second run of a whole class:
 *
 * <pre>{@code
 * @InTurkishLocale
 * class FoldingInTurkishLocaleTest extends FoldingTest {}
 * }</pre>
 */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@ExtendWith(InTurkishLocale.Extension.class)
public @interface InTurkishLocale {

  /** Sets the locale before each test and puts the former one back after it. */
  final class Extension implements BeforeEachCallback, AfterEachCallback {
    private static final ExtensionContext.Namespace SPACE =
        ExtensionContext.Namespace.create(InTurkishLocale.class);

    @Override
    public void beforeEach(ExtensionContext context) {
      Locale[] former = {
        Locale.getDefault(),
        Locale.getDefault(Locale.Category.DISPLAY),
        Locale.getDefault(Locale.Category.FORMAT)
      };
      context.getStore(SPACE).put("former", former);
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
    }

    @Override
    public void afterEach(ExtensionContext context) {
      Locale[] former = context.getStore(SPACE).remove("former", Locale[].class);
      Locale.setDefault(former[0]);
      Locale.setDefault(Locale.Category.DISPLAY, former[1]);
      Locale.setDefault(Locale.Category.FORMAT, former[2]);
    }
  }
}
