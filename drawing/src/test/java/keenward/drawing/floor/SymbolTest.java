package keenward.drawing.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import keenward.core.plan.DeviceKind;
import org.junit.jupiter.api.Test;

class SymbolTest {

  @Test
  void everyKindOfDeviceHasASymbolOfItsOwn() {
    assertThat(Arrays.stream(DeviceKind.values()).map(Symbol::of)).doesNotHaveDuplicates();
  }

  @Test
  void symbolsDifferInShapeAndNotJustInColour() {
    assertThat(
            Arrays.stream(Symbol.values())
                .map(symbol -> symbol.outline() + " " + symbol.strokes() + " " + symbol.fills()))
        .doesNotHaveDuplicates();
    assertThat(Arrays.stream(Symbol.values()).map(Symbol::caption)).doesNotHaveDuplicates();
  }
}
