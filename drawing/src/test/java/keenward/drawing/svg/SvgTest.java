package keenward.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SvgTest {

  @Test
  void textAndAttributesAreEscaped() {
    String svg =
        new Svg()
            .open("g", "data-name", "\"><script>'&")
            .text("text", "a < b & c\u0000\u0007\uD800", "x", 1.005)
            .close()
            .toString();
    assertThat(svg)
        .isEqualTo(
            """
            <g data-name="&quot;&gt;&lt;script&gt;&#39;&amp;">
             <text x="1.01">a &lt; b &amp; c\uFFFD\uFFFD\uFFFD</text>
            </g>
            """);
  }

  @Test
  void numbersAreShortAndNeverInScientificNotation() {
    assertThat(Svg.number(-0.001)).isEqualTo("0");
    assertThat(Svg.number(12.50)).isEqualTo("12.5");
    assertThat(Svg.number(1e7)).isEqualTo("10000000");
  }

  @Test
  void anUnclosedElementIsRefused() {
    assertThatThrownBy(() -> new Svg().open("g").toString())
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void idsAreUniqueHoweverAlikeTheNames() {
    Identifiers ids = new Identifiers("p-");
    assertThat(ids.of("device", "Shop door contact")).isEqualTo("p-device-shop-door-contact");
    assertThat(ids.of("device", "Shop door/contact")).isEqualTo("p-device-shop-door-contact-2");
    assertThat(ids.of("device", "Ünü")).isEqualTo("p-device-n");
    assertThat(ids.of("device", "漢")).isEqualTo("p-device-unnamed");
  }
}
