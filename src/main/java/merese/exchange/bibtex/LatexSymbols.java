package merese.exchange.bibtex;

import java.util.HashMap;
import java.util.Map;

/**
 * What the commands of LaTeX print that stand for a character: those of the kernel, textcomp and
 * fontenc (LaTeX2e: An unofficial reference manual, "Text symbols", "Additional Latin letters",
 * "Accents" and "Math symbols"; from memory), and those of biblatex for names and titles.
 */
final class LatexSymbols {
  /** Accents, as combining characters. */
  private static final Map<String, String> ACCENTS =
      pairs(
          """
          ` 0300 ' 0301 ^ 0302 ~ 0303 = 0304 u 0306 . 0307 " 0308 h 0309 r 030A H 030B v 030C
          G 030F d 0323 c 0327 k 0328 b 0331 t 0361 U 030E f 0311
          """,
          true);

  private static final Map<String, String> SYMBOLS =
      pairs(
          """
          ss ß SS ẞ ae æ AE Æ oe œ OE Œ o ø O Ø aa å AA Å l ł L Ł i ı j ȷ imath ı jmath ȷ
          dh ð DH Ð dj đ DJ Đ th þ TH Þ ng ŋ NG Ŋ ij ĳ IJ Ĳ
          dag † ddag ‡ textdagger † textdaggerdbl ‡ S § P ¶ textsection § textparagraph ¶
          copyright © textcopyright © textregistered ® texttrademark ™ pounds £ textsterling £
          texteuro € euro € textyen ¥ textcent ¢ dots … ldots … textellipsis … cdots …
          textdegree ° degree ° texttimes × times × textdiv ÷ div ÷ textpm ± pm ± textmu µ
          textonehalf ½ textonequarter ¼ textthreequarters ¾ textonesuperior ¹ texttwosuperior ²
          textthreesuperior ³ textordmasculine º textordfeminine ª textnumero № textbullet •
          textperiodcentered · cdot · slash / hyphen - textendash – textemdash — bibrangedash –
          textquoteleft ‘ textquoteright ’ textquotedblleft “ textquotedblright ” textquotedbl "
          textquotesingle ' lq ‘ rq ’ quotedblbase „ quotesinglbase ‚ glqq „ grqq “ glq ‚ grq ‘
          guillemotleft « guillemotright » guillemetleft « guillemetright » flqq « frqq »
          guilsinglleft ‹ guilsinglright › flq ‹ frq ›
          textexclamdown ¡ textquestiondown ¿ textbackslash \\ textasciitilde ~ textasciicircum ^
          textasciigrave ` textasciiacute ´ textless < textgreater > textbar | textbraceleft {
          textbraceright } lbrace { rbrace } textunderscore _ textdollar $ textpercent %
          textampersand & texthash # textasteriskcentered * textvisiblespace ␣ textsharp ♯
          TeX TeX LaTeX LaTeX LaTeXe LaTeX2e BibTeX BibTeX XeTeX XeTeX LuaTeX LuaTeX
          alpha α beta β gamma γ delta δ epsilon ϵ varepsilon ε zeta ζ eta η theta θ vartheta ϑ
          iota ι kappa κ lambda λ mu μ nu ν xi ξ pi π varpi ϖ rho ρ varrho ϱ sigma σ varsigma ς
          tau τ upsilon υ phi ϕ varphi φ chi χ psi ψ omega ω Gamma Γ Delta Δ Theta Θ Lambda Λ Xi Ξ
          Pi Π Sigma Σ Upsilon Υ Phi Φ Psi Ψ Omega Ω hbar ℏ ell ℓ infty ∞ partial ∂ nabla ∇
          leq ≤ le ≤ geq ≥ ge ≥ neq ≠ ne ≠ approx ≈ sim ∼ simeq ≃ equiv ≡ propto ∝ ll ≪ gg ≫
          to → rightarrow → leftarrow ← leftrightarrow ↔ Rightarrow ⇒ in ∈ notin ∉ subset ⊂
          cup ∪ cap ∩ emptyset ∅ forall ∀ exists ∃ sum ∑ prod ∏ int ∫ circ ∘ prime ′ ast ∗ star ⋆
          oplus ⊕ otimes ⊗ langle ⟨ rangle ⟩ perp ⊥ parallel ∥ degreeC ℃ natural ♮ sharp ♯ flat ♭
          """,
          false);

  private LatexSymbols() {}

  private static Map<String, String> pairs(String text, boolean hexadecimal) {
    String[] words = text.strip().split("\\s+");
    Map<String, String> pairs = new HashMap<>();
    for (int i = 0; i < words.length; i += 2) {
      String value = words[i + 1];
      pairs.put(words[i], hexadecimal ? Character.toString(Integer.parseInt(value, 16)) : value);
    }
    return Map.copyOf(pairs);
  }

  /** The combining character of an accent's command; null for another command. */
  static String accent(String command) {
    return ACCENTS.get(command);
  }

  /** What a command prints that takes no argument; null where it is not known. */
  static String of(String command) {
    return SYMBOLS.get(command);
  }

  private static final String RAISED_FROM = "0123456789+-=()ni";
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁼⁽⁾ⁿⁱ";
  private static final String LOWERED_FROM = "0123456789+-=()";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉₊₋₌₍₎";

  /** As raised characters; null where there are none for some. */
  static String raised(String text) {
    return mapped(text, RAISED_FROM, RAISED);
  }

  /** As lowered characters; null where there are none for some. */
  static String lowered(String text) {
    return mapped(text, LOWERED_FROM, LOWERED);
  }

  private static String mapped(String text, String from, String to) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      int at = from.indexOf(text.charAt(i));
      if (at < 0) {
        return null;
      }
      out.append(to.charAt(at));
    }
    return out.toString();
  }
}
