package merese.exchange.marc;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * MARC's codes of languages, which are those of ISO 639-2/B, and the tags of BCP 47 (RFC 5646),
 * which takes the shortest code there is.
 */
final class LanguageCodes {
  /** ISO 639-2/B and ISO 639-1. */
  private static final String TWO_LETTERS =
      "aar aa abk ab afr af aka ak alb sq amh am ara ar arg an arm hy asm as ava av ave ae aym ay"
          + " aze az bak ba bam bm baq eu bel be ben bn bih bh bis bi bos bs bre br bul bg bur my"
          + " cat ca cha ch che ce chi zh chu cu chv cv cor kw cos co cre cr cze cs dan da div dv"
          + " dut nl dzo dz eng en epo eo est et ewe ee fao fo fij fj fin fi fre fr fry fy ful ff"
          + " geo ka ger de gla gd gle ga glg gl glv gv gre el grn gn guj gu hat ht hau ha heb he"
          + " her hz hin hi hmo ho hrv hr hun hu ibo ig ice is ido io iii ii iku iu ile ie ina ia"
          + " ind id ipk ik ita it jav jv jpn ja kal kl kan kn kas ks kau kr kaz kk khm km kik ki"
          + " kin rw kir ky kom kv kon kg kor ko kua kj kur ku lao lo lat la lav lv lim li lin ln"
          + " lit lt ltz lb lub lu lug lg mac mk mah mh mal ml mao mi mar mr may ms mlg mg mlt mt"
          + " mon mn nau na nav nv nbl nr nde nd ndo ng nep ne nno nn nob nb nor no nya ny oci oc"
          + " oji oj ori or orm om oss os pan pa per fa pli pi pol pl por pt pus ps que qu roh rm"
          + " rum ro run rn rus ru sag sg san sa sin si slo sk slv sl sme se smo sm sna sn snd sd"
          + " som so sot st spa es srd sc srp sr ssw ss sun su swa sw swe sv tah ty tam ta tat tt"
          + " tel te tgk tg tgl tl tha th tib bo tir ti ton to tsn tn tso ts tuk tk tur tr twi tw"
          + " uig ug ukr uk urd ur uzb uz ven ve vie vi vol vo wel cy wln wa wol wo xho xh yid yi"
          + " yor yo zha za zul zu";

  /** ISO 639-2/T where it differs, and codes that MARC has given up (from memory). */
  private static final String OTHERS =
      "sqi sq hye hy eus eu mya my zho zh ces cs nld nl fra fr kat ka deu de ell el isl is mkd mk"
          + " mri mi msa ms fas fa ron ro slk sk bod bo cym cy scc sr scr hr iri ga gae gd max gv"
          + " esp eo fri fy gag gl lan oc far fo gua gn lap se mla mg sao sm sho sn snh si sso st"
          + " swz ss tag tl taj tg tar tt tsw tn int ia cam km eth gez";

  /** No information, several, undetermined, none, not coded. */
  private static final Set<String> NO_LANGUAGE = Set.of("mul", "und", "zxx", "mis");

  private static final Map<String, String> TAGS = new HashMap<>();
  private static final Map<String, String> CODES = new HashMap<>();

  static {
    String[] usual = TWO_LETTERS.split(" ");
    for (int i = 0; i < usual.length; i += 2) {
      TAGS.put(usual[i], usual[i + 1]);
      CODES.put(usual[i + 1], usual[i]);
    }
    String[] others = OTHERS.split(" ");
    for (int i = 0; i < others.length; i += 2) {
      TAGS.put(others[i], others[i + 1]);
    }
  }

  private LanguageCodes() {}

  /** The tag of a language; empty where the code names none. */
  static Optional<String> tag(String code) {
    String lower = code.strip().toLowerCase(Locale.ROOT);
    boolean letters = lower.length() == 3 && lower.chars().allMatch(c -> c >= 'a' && c <= 'z');
    return letters && !NO_LANGUAGE.contains(lower)
        ? Optional.of(TAGS.getOrDefault(lower, lower))
        : Optional.empty();
  }

  /** The code of a tag's language, whatever its script or country. */
  static Optional<String> code(String tag) {
    String language = tag.split("-", 2)[0].toLowerCase(Locale.ROOT);
    Optional<String> code = Optional.ofNullable(CODES.get(language));
    return code.isPresent() || language.length() != 3 ? code : Optional.of(language);
  }
}
