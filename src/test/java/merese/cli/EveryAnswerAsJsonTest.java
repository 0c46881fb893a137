package merese.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole demo library, so that whatever an answer may hold is written out once. */
class EveryAnswerAsJsonTest {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "covers|bladed ring",
        "fewest|ring|--pictured",
        "concordance|ring",
        "witnesses|folded foot",
        "editions|quenby-1926",
        "first|bladed ring",
        "gaps",
        "pull|bladed ring|folded foot",
        "claims|target stopper|bladed ring|folded foot",
        "identify|--object|d-9",
        "quote|bladed ring|folded foot|reproduction",
        "rights|bladed ring|folded foot",
        "literature|d-3|d-17|folded foot",
        "find|ring"
      })
  void isOneObject(String words) throws Exception {
    Ran ran = Ran.merese((words + "|--json").split("\\|"));
    assertEquals("", ran.err());
    JsonNode answer = MAPPER.readTree(ran.out());
    assertTrue(answer.isObject() && !answer.isEmpty(), ran.out());
  }
}
