package merese.model;

import java.util.List;
import java.util.Objects;

/**
 * One number of a locator: what was printed and what it is worth. The value of a roman numeral is
 * its worth, the value of a lettered one (A, B) its place in the alphabet.
 *
 * @param printed the number alone, as typed or, inside a range, in the style of its ends
 * @param style the kind of numeral
 * @param prefix what stands before the numeral: "A" in A8; empty if nothing does
 * @param value the worth of the numeral, from 0
 * @param decimals further numbers after points: 1 and 244 in 79.1.244
 * @param suffix a letter, an asterisk, or bis, ter, quater in small letters; empty if none
 * @param side the side of a leaf
 * @param counted whether it was printed in square brackets: counted by the reader, not printed
 */
public record LocatorNumber(
    String printed,
    Style style,
    String prefix,
    long value,
    List<Long> decimals,
    String suffix,
    Side side,
    boolean counted) {

  /** The kind of numeral; kept when printed, ignored when sorted. */
  public enum Style {
    ARABIC,
    ROMAN_UPPER,
    ROMAN_LOWER,
    LETTER_UPPER,
    LETTER_LOWER;

    /** Whether this is a roman numeral. */
    public boolean isRoman() {
      return this == ROMAN_UPPER || this == ROMAN_LOWER;
    }

    boolean isLetter() {
      return this == LETTER_UPPER || this == LETTER_LOWER;
    }
  }

  /** The side of a leaf, the front one first. */
  public enum Side {
    NONE,
    RECTO,
    VERSO
  }

  /** Copies the decimals. */
  public LocatorNumber {
    Objects.requireNonNull(printed);
    Objects.requireNonNull(style);
    Objects.requireNonNull(prefix);
    decimals = List.copyOf(decimals);
    Objects.requireNonNull(suffix);
    Objects.requireNonNull(side);
  }

  /** A numeral that was read, whose printed form is still to come. */
  static LocatorNumber unprinted(Style style, String prefix, long value) {
    return new LocatorNumber("", style, prefix, value, List.of(), "", Side.NONE, false);
  }

  LocatorNumber withPrinted(String text) {
    return new LocatorNumber(text, style, prefix, value, decimals, suffix, side, counted);
  }

  LocatorNumber withPrefix(String text) {
    return new LocatorNumber(printed, style, text, value, decimals, suffix, side, counted);
  }

  LocatorNumber withValue(long worth) {
    return new LocatorNumber(printed, style, prefix, worth, decimals, suffix, side, counted);
  }

  LocatorNumber withDecimals(List<Long> further) {
    return new LocatorNumber(printed, style, prefix, value, further, suffix, side, counted);
  }

  LocatorNumber withSuffix(String text) {
    return new LocatorNumber(printed, style, prefix, value, decimals, text, side, counted);
  }

  LocatorNumber withSide(Side other) {
    return new LocatorNumber(printed, style, prefix, value, decimals, suffix, other, counted);
  }

  LocatorNumber withCounted(boolean isCounted) {
    return new LocatorNumber(printed, style, prefix, value, decimals, suffix, side, isCounted);
  }

  /** This number printed anew from its parts, with at least so many digits. */
  LocatorNumber written(int digits) {
    StringBuilder out = new StringBuilder(prefix);
    switch (style) {
      case ARABIC -> {
        String plain = Long.toString(value);
        out.append("0".repeat(Math.max(0, digits - plain.length()))).append(plain);
      }
      case ROMAN_UPPER -> out.append(RomanNumeral.write(value, true));
      case ROMAN_LOWER -> out.append(RomanNumeral.write(value, false));
      case LETTER_UPPER -> out.append((char) ('A' + value - 1));
      case LETTER_LOWER -> out.append((char) ('a' + value - 1));
    }
    for (long decimal : decimals) {
      out.append('.').append(decimal);
    }
    out.append(suffix.length() > 1 ? " " : "").append(suffix);
    if (side != Side.NONE) {
      // "x v" is leaf 10 verso, "xv" leaf 15
      out.append(style != Style.ARABIC || suffix.length() > 1 ? " " : "");
      out.append(side == Side.RECTO ? 'r' : 'v');
    }
    if (counted) {
      out.insert(0, '[').append(']');
    }
    return withPrinted(out.toString());
  }

  /** Whether both mean the same number in the same style, however spaced. */
  boolean sameAs(LocatorNumber other) {
    return style == other.style
        && value == other.value
        && side == other.side
        && counted == other.counted
        && prefix.equals(other.prefix)
        && suffix.equals(other.suffix)
        && decimals.equals(other.decimals);
  }

  /** How many digits the first run of digits in the printed form has. */
  int digits() {
    int begin = 0;
    while (begin < printed.length() && !LocatorScanner.isDigit(printed.charAt(begin))) {
      begin++;
    }
    int end = begin;
    while (end < printed.length() && LocatorScanner.isDigit(printed.charAt(end))) {
      end++;
    }
    return end - begin;
  }

  boolean hasLetterSuffix() {
    return suffix.length() == 1 && suffix.charAt(0) != '*';
  }
}
