package merese.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import merese.search.FindQuery.All;
import merese.search.FindQuery.Any;
import merese.search.FindQuery.Condition;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Not;
import merese.search.FindQuery.Phrase;
import merese.search.FindQuery.Required;
import merese.search.FindQuery.Words;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindQueryTest {
  private static String read(String question) {
    return shown(FindQuery.parse(question).root());
  }

  private static String shown(Node node) {
    if (node instanceof Words words) {
      return field(words.field())
          + String.join("+", words.folded())
          + (words.begun().isEmpty() ? "" : words.begun() + "*");
    } else if (node instanceof Phrase phrase) {
      return field(phrase.field()) + phrase.folded();
    } else if (node instanceof Condition condition) {
      return condition.field().code() + "=" + condition.value();
    } else if (node instanceof All all) {
      return (all.loose() ? "list" : "all") + shown(all.nodes());
    } else if (node instanceof Any any) {
      return "any" + shown(any.nodes());
    } else if (node instanceof Not not) {
      return "not " + shown(not.node());
    }
    return "+" + shown(((Required) node).node());
  }

  private static String shown(List<Node> nodes) {
    return nodes.stream().map(FindQueryTest::shown).toList().toString().replace(", ", " ");
  }

  private static String field(Optional<FindField> field) {
    return field.map(f -> f.code() + ":").orElse("");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "wet hand                     | list[wet hand]",
        "the wet hand of a            | list[wet hand]",
        "the                          | the",
        "of the                       | list[of the]",
        "knife-edged rings            | list[knife+edged ring]",
        "moulded                      | molded",
        "\"wet hand\"                 | [wet, hand]",
        "“wet hand”                   | [wet, hand]",
        "wet AND hand                 | all[wet hand]",
        "wet and hand                 | list[wet hand]",
        "wet OR hand                  | any[wet hand]",
        "wet AND hand OR foot         | any[all[wet hand] foot]",
        "wet AND (hand OR foot)       | all[wet any[hand foot]]",
        "ring NOT sharp               | list[ring not sharp]",
        "ring -sharp +cork            | list[ring not sharp +cork]",
        "+cork                        | list[+cork]",
        "ring - sharp                 | list[ring sharp]",
        "title:stem                   | title:stem",
        "TITLE: stem                  | title:stem",
        "title:\"the stem\"           | title:[the, stem]",
        "title:(stem OR foot) ring    | list[any[title:stem title:foot] ring]",
        "year:1926                    | year=1926..1926",
        "year:..1950                  | year=..1950",
        "year:1900..                  | year=1900..",
        "year:987..1900               | year=0987..1900",
        "kind:sale-catalogue          | kind=sale-catalogue",
        "kind:\"sale catalogue\"      | kind=sale-catalogue",
        "concept:ring-bladed          | concept=ring-bladed",
        "concept:\"bladed ring\"      | concept=bladed ring",
        "picture:YES                  | picture=yes",
        "knife*                       | [knife]*",
        "glasses*                     | [glasse, glasses]*",
        "moul*                        | [moul, mol]*",
        "What is it?                  | what",
        "NOTED ORB ANDREW             | list[noted orb andrew]",
        "O'Hara                       | ohara",
        "ring) OR (                   | !",
      })
  void isReadAs(String question, String expected) {
    if (expected.equals("!")) {
      assertThrows(FindQueryException.class, () -> read(question));
    } else {
      assertEquals(expected, read(question));
    }
  }

  @Nested
  class WhatCannotBeReadIsExplainedUnderTheQuestion {
    private String refusal(String question) {
      return assertThrows(FindQueryException.class, () -> FindQuery.parse(question)).getMessage();
    }

    @Test
    void withACaretUnderTheQuotationMarkThatIsNeverClosed() {
      assertEquals(
          "this quotation mark is never closed; put another after the last word that belongs"
              + " together\n"
              + "  ring \"wet hand\n"
              + "       ^",
          refusal("ring \"wet hand"));
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "autor:quenby     | 0  | did you mean author?",
          "ring xyzzy:stem  | 5  | write one of author, title",
          "http://x         | 0  | use quotation marks",
          "ring title:      | 10 | has no value",
          "(title:)         | 6  | has no value",
          "year:..          | 5  | neither a first nor a last year",
          "year:1950..1900  | 5  | 1900..1950",
          "year:19x6        | 5  | is no year",
          "year:1900..19x6  | 11 | \"19x6\" is no year",
          "year:12345       | 5  | is no year",
          "kind:monogaph    | 5  | did you mean monograph?",
          "picture:maybe    | 8  | yes, no",
          "is:book          | 3  | note, source",
          "ring \"\"        | 5  | no word between these quotation marks",
          "ring ()          | 5  | no word between these brackets",
          "(ring            | 0  | never closed",
          "ring)            | 4  | closes nothing",
          "ring AND         | 5  | AND has nothing after it",
          "AND ring         | 0  | AND has nothing before it",
          "ring OR          | 5  | OR has nothing after it",
          "OR ring          | 0  | OR has nothing before it",
          "ring NOT         | 5  | NOT has no word after it",
          "NOT sharp        | 0  | only says what not to find",
          "-sharp -cork     | 0  | only says what not to find",
          "ring OR NOT cork | 0  | only says what not to find",
          "*edged           | 0  | put the first letters before it",
          "kn*fe            | 2  | end the word with it: kn*",
          "... ?! --        | 0  | only signs",
        })
    void withThePlaceAndWhatToDo(String question, int offset, String words) {
      FindQueryException refused =
          assertThrows(FindQueryException.class, () -> FindQuery.parse(question));
      assertEquals(offset, refused.offset(), refused.getMessage());
      assertTrue(refused.getMessage().contains(words), refused.getMessage());
      String[] lines = refused.getMessage().split("\n", -1);
      assertEquals("  " + question, lines[1]);
      assertEquals(" ".repeat(offset + 2) + "^", lines[2]);
    }

    @Test
    void emptyOrBlank() {
      assertTrue(refusal("").startsWith("there is nothing to look for"));
      assertTrue(refusal(" \t ").startsWith("there is nothing to look for"));
    }

    @Test
    void countingColumnsAsATerminalDoes() {
      String[] lines = refusal("e\u0301te\u0301 \"ring").split("\n", -1);
      assertEquals("  e\u0301te\u0301 \"ring", lines[1]);
      assertEquals("      ^", lines[2]);
    }

    @Test
    void withOnlyTheNeighbourhoodOfThePlaceWhereTheQuestionIsLong() {
      String question = "ring ".repeat(50) + "\"hand " + "foot ".repeat(50);
      String[] lines = refusal(question).split("\n", -1);
      assertTrue(lines[1].length() < 80, lines[1]);
      assertEquals('"', lines[1].charAt(lines[2].indexOf('^')));
    }

    @Test
    void withoutControlCharacters() {
      assertEquals("  ring [31m \"x", refusal("ring\u001B[31m \"x").split("\n", -1)[1]);
    }
  }

  @Nested
  class HostileQuestions {
    private void readOrRefused(String question) {
      assertTimeoutPreemptively(
          Duration.ofSeconds(20),
          () -> {
            try {
              FindQuery.parse(question);
            } catch (FindQueryException e) {
              assertTrue(e.getMessage().contains("^"), e.getMessage());
            }
          });
    }

    @Test
    void ofManyWordsAreRefused() {
      FindQueryException refused =
          assertThrows(FindQueryException.class, () -> FindQuery.parse("ring ".repeat(100)));
      assertTrue(refused.getMessage().startsWith("the question has too many words"));
      readOrRefused("ring ".repeat(100_000));
      readOrRefused("x".repeat(1_000_000));
    }

    @Test
    void ofDeepBracketsAreRefused() {
      FindQueryException refused =
          assertThrows(
              FindQueryException.class,
              () -> FindQuery.parse("(".repeat(1000) + "a" + ")".repeat(1000)));
      assertTrue(refused.getMessage().contains("deep"), refused.getMessage());
    }

    @Test
    void ofManySignsNeitherHangNorOverflow() {
      for (String sign :
          List.of("-", "+", "NOT ", "title:", "*", "\"", "()", ":", "OR ", "a OR ", "AND ")) {
        readOrRefused(sign.repeat(4000 / sign.length()));
        readOrRefused(sign.repeat(4000 / sign.length() - 1) + "a");
      }
    }

    @Test
    void madeAtRandomAreReadOrRefused() {
      String[] pieces = {
        "ring",
        "\"",
        "(",
        ")",
        " ",
        "-",
        "+",
        "*",
        ":",
        "title:",
        "year:",
        "..",
        "1900",
        "AND ",
        "OR ",
        "NOT ",
        "\u0000",
        "\uD83D",
        "\uDE00",
        "é",
        "\u0301",
        "\n",
        "?",
        "~",
        "^2",
        "[a TO b]",
        "kind:",
        "\\",
        "/x/"
      };
      Random random = new Random(7);
      for (int i = 0; i < 20_000; i++) {
        StringBuilder question = new StringBuilder();
        for (int n = random.nextInt(12); n >= 0; n--) {
          question.append(pieces[random.nextInt(pieces.length)]);
        }
        readOrRefused0(question.toString());
      }
    }

    private void readOrRefused0(String question) {
      try {
        FindQuery.parse(question);
      } catch (FindQueryException e) {
        assertTrue(e.getMessage().contains("^"), e.getMessage());
      }
    }
  }

  @Test
  void aWordsPlaceIsThatInTheText() {
    All all = assertInstanceOf(All.class, FindQuery.parse("  wet  hand ").root());
    Words hand = assertInstanceOf(Words.class, all.nodes().get(1));
    assertEquals(7, hand.start());
    assertEquals(11, hand.end());
  }
}
