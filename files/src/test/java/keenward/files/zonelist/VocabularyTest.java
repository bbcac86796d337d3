package keenward.files.zonelist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class VocabularyTest {

  /** What a plan says, and export-zones writes, is understood. */
  @ParameterizedTest
  @EnumSource(ZoneResponse.class)
  void knowsTheFormatsOwnWordForEveryResponse(ZoneResponse response) {
    assertThat(Words.RESPONSES.read(response.word()).meanings()).containsExactly(response);
  }

  @Test
  void knowsTheFormatsOwnWordForEveryDetectorAndWiring() {
    Arrays.stream(DeviceKind.values())
        .filter(kind -> ZoneListReader.usual(kind).isPresent())
        .forEach(
            kind -> assertThat(Words.KINDS.read(kind.word()).meanings()).containsExactly(kind));
    for (LoopWiring wiring : LoopWiring.values()) {
      assertThat(Words.WIRINGS.read(wiring.word()).meanings())
          .containsExactly(java.util.Optional.of(wiring));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "EE, ENTRY_EXIT",
    "INT FOLL, FOLLOWER",
    "PERIM, PERIMETER",
    "Retardada, ENTRY_EXIT",
    "Instantánea, INSTANT",
    "Verzögert, ENTRY_EXIT",
    "AUSSENHAUT, PERIMETER",
    "Außenhaut, PERIMETER",
    "Temporisée, ENTRY_EXIT",
    "Périmétrique, PERIMETER",
    "24 Stunden, TWENTY_FOUR_HOUR"
  })
  void knowsResponsesInFourLanguagesShortAndLong(String words, ZoneResponse response) {
    assertThat(Words.RESPONSES.read(words).meanings()).containsExactly(response);
    assertThat(Words.RESPONSES.read(words).rest()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "D/W, CONTACT",
    "GB, GLASS_BREAK",
    "SMK, SMOKE",
    "Detector de humos, SMOKE",
    "Rauchmelder, SMOKE",
    "Détecteur d'ouverture, CONTACT",
    "Bris de vitre, GLASS_BREAK",
    "Doble tecnología, DUAL_MOTION",
    "Überfalltaster, HOLD_UP_BUTTON"
  })
  void knowsSensorsInFourLanguagesShortAndLong(String words, DeviceKind kind) {
    assertThat(Words.KINDS.read(words).meanings()).containsExactly(kind);
    assertThat(Words.KINDS.read(words).rest()).isEmpty();
  }

  @Test
  void theLongestPhraseWins() {
    assertThat(Words.KINDS.read("carbon monoxide detector").found()).hasSize(1);
    assertThat(Words.RESPONSES.read("entry follower").meanings())
        .containsExactly(ZoneResponse.FOLLOWER);
  }

  @Test
  void whatItDoesNotKnowIsLeftOver() {
    assertThat(Words.KINDS.read("PIR (pets)").rest()).containsExactly("pets");
    assertThat(Words.KINDS.read("gizmo").found()).isEmpty();
  }
}
