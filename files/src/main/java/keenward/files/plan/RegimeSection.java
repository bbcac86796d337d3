package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import keenward.core.plan.Fact;
import keenward.core.plan.Regime;
import keenward.core.plan.Standard;
import keenward.core.quantities.Parsed;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shape;
import keenward.files.shape.Shapes;

/** The published rules that a site has to meet, one or several, each as a text or as a map. */
final class RegimeSection {

  private static final String EXPECTATION =
      "a standard, its edition and its grade, such as cp-01 2010 or en50131 grade 2";
  private static final Pattern TEXT =
      Pattern.compile("(\\S+)(?: (?!grade(?: |$))(\\S+))?(?: grade ([1-4]))?");

  static final Field<String> STANDARD =
      required(
          "standard",
          Shapes.text(60),
          "en50131",
          "One of `cp-01`, `en50131`, `ul1023`, `nfpa72-household`; any other is kept by its name, and its figures are"
              + " not assessed.");
  static final Field<Fact<String>> EDITION =
      optional(
          "edition",
          Common.name(),
          "2006",
          "Edition or year; decides between figures that changed.");
  static final Field<Fact<Integer>> GRADE =
      optional(
          "grade",
          Shapes.wholeNumber(1, 4).orUnknown(),
          "2",
          "Security grade, for the standards that have grades.");

  static final MapShape SHAPE =
      MapShape.of("regime", "A published set of rules, in full.", STANDARD, EDITION, GRADE)
          .example(
              """
              regime:
                - { standard: en50131, edition: 2006, grade: 2 }
                - nfpa72-household
              """);

  private static final Shape<Regime> ONE_TEXT = Shapes.text(100).parsedBy(RegimeSection::parse);
  private static final Shape<Regime> ONE_MAP = SHAPE.as(RegimeSection::bind);

  /** The whole value of {@code regime:}. */
  static final Shape<List<Regime>> VALUE =
      Shapes.either(
          ONE_TEXT.as(List::of),
          ONE_MAP.as(List::of),
          Shapes.list(Shapes.<Regime>either(ONE_TEXT, ONE_MAP)).of(1, 20));

  private RegimeSection() {}

  private static Regime bind(Fields fields) {
    return regime(fields.get(STANDARD), fields.fact(EDITION), fields.fact(GRADE));
  }

  private static Regime regime(String name, Fact<String> edition, Fact<Integer> grade) {
    return new Regime(standard(name), edition, grade, name);
  }

  private static Standard standard(String name) {
    for (Standard standard : Standard.values()) {
      if (standard.word().equals(name)) {
        return standard;
      }
    }
    return Standard.OTHER;
  }

  private static Parsed<Regime> parse(String text) {
    Matcher matcher = TEXT.matcher(text.strip());
    if (!matcher.matches()) {
      String name = text.strip().split(" ", 2)[0];
      return standard(name) == Standard.OTHER && !text.contains(" grade ")
          ? Parsed.of(new Regime(Standard.OTHER, Fact.missing(), Fact.missing(), text.strip()))
          : Parsed.expected(EXPECTATION);
    }
    String edition = matcher.group(2);
    String grade = matcher.group(3);
    return Parsed.of(
        regime(
            matcher.group(1),
            edition == null ? Fact.missing() : Fact.of(edition),
            grade == null ? Fact.missing() : Fact.of(Integer.valueOf(grade))));
  }
}
