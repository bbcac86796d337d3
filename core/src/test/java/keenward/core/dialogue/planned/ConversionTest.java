package keenward.core.dialogue.planned;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.PlanSource;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.planned.PlanAnswer.Content;
import org.junit.jupiter.api.Test;

class ConversionTest {

  private static Conversion.Result convert(
      FieldType type, Map<String, String> words, Content content) {
    PlanSource.OneFact source = new PlanSource.OneFact("zone.name", words, true);
    return new Conversion(
            new Field(
                "x",
                "",
                type,
                Value.nothing(),
                List.of(),
                Condition.ALWAYS,
                false,
                Optional.of(source)),
            source)
        .convert(content);
  }

  private static FieldType.Option option(String word) {
    return new FieldType.Option(word, "", word);
  }

  private static final FieldType TENS =
      new FieldType.WholeNumber(
          1, 25, 1, "s", 10, 2, List.of(new FieldType.Special("00", 0, "never")));

  @Test
  void aTimeIsCountedAsThePanelCountsAndNeverRounded() {
    assertThat(convert(TENS, Map.of(), new Content.Time(90_000, "90 s")).value())
        .isEqualTo(new Value.Whole(9));
    assertThat(convert(TENS, Map.of(), new Content.Time(0, "0 s")).value())
        .isEqualTo(new Value.Whole(0));
    Conversion.Result odd = convert(TENS, Map.of(), new Content.Time(45_000, "45 s"));
    assertThat(odd.value()).isNull();
    assertThat(odd.problem()).isEqualTo("'45 s'");
    assertThat(odd.expected()).isEqualTo("10 to 250 s in steps of 10 s, or never");
    assertThat(convert(TENS, Map.of(), new Content.Time(260_000, "260 s")).value()).isNull();
  }

  @Test
  void aTimeMayBeAWordOfAChoice() {
    FieldType choice = new FieldType.Choice(List.of(option("12 h"), option("daily")));
    assertThat(convert(choice, Map.of(), new Content.Time(43_200_000, "720 min")).value())
        .isEqualTo(new Value.Word("12 h"));
    assertThat(
            convert(choice, Map.of("24 h", "daily"), new Content.Time(86_400_000, "1 d")).value())
        .isEqualTo(new Value.Word("daily"));
    assertThat(convert(choice, Map.of(), new Content.Time(86_400_000, "1 d")).value()).isNull();
  }

  @Test
  void wordsGoThroughTheMapAndOthersAreRefused() {
    FieldType choice = new FieldType.Choice(List.of(option("door"), option("fire")));
    assertThat(
            convert(choice, Map.of("entry-exit", "door"), new Content.Word("entry-exit")).value())
        .isEqualTo(new Value.Word("door"));
    assertThat(convert(choice, Map.of(), new Content.Word("fire")).value())
        .isEqualTo(new Value.Word("fire"));
    Conversion.Result none = convert(choice, Map.of(), new Content.Word("medical"));
    assertThat(none.value()).isNull();
    assertThat(none.expected()).isEqualTo("one of door, fire");
    assertThat(convert(TENS, Map.of("yes", "00"), new Content.Word("yes")).value())
        .isEqualTo(new Value.Whole(0));
  }

  @Test
  void severalWordsNeedASet() {
    FieldType set =
        new FieldType.OptionSet(
            List.of(option("1"), option("2"), option("3")), FieldType.Written.LIST);
    assertThat(convert(set, Map.of(), new Content.Words(List.of("3", "1"))).value())
        .isEqualTo(new Value.Members(0b101));
    assertThat(convert(set, Map.of(), new Content.Words(List.of("4"))).value()).isNull();
    assertThat(convert(set, Map.of(), new Content.Word("2")).value())
        .isEqualTo(new Value.Members(0b010));
    FieldType choice = new FieldType.Choice(List.of(option("1"), option("2")));
    assertThat(convert(choice, Map.of(), new Content.Words(List.of("2"))).value())
        .isEqualTo(new Value.Word("2"));
    assertThat(convert(choice, Map.of(), new Content.Words(List.of("1", "2"))).value()).isNull();
  }

  @Test
  void digitsKeepTheirLeadingZerosAndTheirLength() {
    FieldType digits = new FieldType.Digits(4, 6, true);
    assertThat(convert(digits, Map.of(), new Content.Text("0a71")).value())
        .isEqualTo(new Value.Text("0A71"));
    assertThat(convert(digits, Map.of(), new Content.Text("071")).value()).isNull();
    assertThat(convert(digits, Map.of(), new Content.Count(71)).value())
        .isEqualTo(new Value.Text("0071"));
    assertThat(
            convert(new FieldType.Serial(8, 8, false), Map.of(), new Content.Text("5512073A"))
                .value())
        .isNull();
  }

  @Test
  void aNameThatIsWrittenOtherwiseIsNoted() {
    FieldType text = new FieldType.FreeText(8, "ABCDEFGHIJKLMNOPQRSTUVWXYZ ");
    Conversion.Result same = convert(text, Map.of(), new Content.Text("Yard"));
    assertThat(same.value()).isEqualTo(new Value.Text("YARD"));
    assertThat(same.note()).isEmpty();
    Conversion.Result shorter = convert(text, Map.of(), new Content.Text("Yard door left"));
    assertThat(shorter.value()).isEqualTo(new Value.Text("YRDDRLFT"));
    assertThat(shorter.note()).isEqualTo("'Yard door left' is written 'YRDDRLFT'");
    assertThat(convert(text, Map.of(), new Content.Text("123")).value()).isNull();
  }

  @Test
  void aNameMayBeMadeOfTheWordsOfAList() {
    FieldType words = new FieldType.WordSequence(2, List.of("DOOR", "HALL", "SHOP"));
    assertThat(convert(words, Map.of(), new Content.Text("Shop door")).value())
        .isEqualTo(new Value.Words(List.of("SHOP", "DOOR")));
    assertThat(convert(words, Map.of("Bakery", "SHOP"), new Content.Text("Bakery")).value())
        .isEqualTo(new Value.Words(List.of("SHOP")));
    assertThat(convert(words, Map.of(), new Content.Text("Shop window")).problem())
        .isEqualTo("the word 'window' of 'Shop window'");
    assertThat(convert(words, Map.of(), new Content.Text("Shop hall door")).value()).isNull();
  }

  @Test
  void aCodeIsAReference() {
    assertThat(convert(new FieldType.Code(4, 6), Map.of(), new Content.Code("user 3")).value())
        .isEqualTo(new Value.Secret("user 3"));
    assertThat(convert(TENS, Map.of(), new Content.Code("user 3")).value()).isNull();
  }
}
