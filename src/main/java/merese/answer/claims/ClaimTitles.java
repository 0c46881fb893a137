package merese.answer.claims;

import merese.answer.CoverageQuestion.Years;
import merese.answer.claims.ClaimsAnswer.Standing;
import merese.model.Claim;

/** What stands over the groups of a {@link ClaimsAnswer}. */
public final class ClaimTitles {
  private final ClaimsQuestion question;

  public ClaimTitles(ClaimsQuestion question) {
    this.question = question;
  }

  /** Over the claims of a kind that stand alike. */
  public String of(Claim.Kind kind, Standing standing) {
    boolean byYear = kind == Claim.Kind.DATE && question.years().isPresent();
    String asked = byYear ? years() : question.place().orElse("");
    return switch (standing) {
      case CLAIMED -> plural(kind);
      case SUPPORTS -> "Supports " + asked;
      case BORDERLINE -> "Borderline for " + asked;
      case DOES_NOT ->
          kind == Claim.Kind.DATE ? "Does not support " + asked : "Names another place";
      case DATES_SOMETHING_ELSE -> "Dates something else than the making";
      case NOT_READ -> kind == Claim.Kind.DATE ? "Date not read, so not sorted" : "Not sorted";
    };
  }

  private String years() {
    Years years = question.years().orElseThrow();
    if (years.from().equals(years.to())) {
      return String.valueOf(years.from().getAsInt());
    } else if (years.from().isEmpty()) {
      return "years up to " + years.to().getAsInt();
    }
    return years.to().isEmpty()
        ? "years from " + years.from().getAsInt()
        : years.from().getAsInt() + "–" + years.to().getAsInt();
  }

  private static String plural(Claim.Kind kind) {
    return switch (kind) {
      case DATE -> "Dates";
      case PLACE -> "Places";
      case MAKER -> "Makers";
      case METHOD -> "Methods";
      case FREQUENCY -> "How frequent";
      case COPY_WARNING -> "Copies";
    };
  }

  /** What sources that say nothing of a kind do. */
  public static String silence(Claim.Kind kind) {
    return switch (kind) {
      case DATE -> "cover it without dating it";
      case PLACE -> "cover it without placing it";
      default -> "do not state the method";
    };
  }
}
