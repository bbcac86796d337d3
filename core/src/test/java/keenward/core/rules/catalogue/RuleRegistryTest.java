package keenward.core.rules.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RuleRegistryTest {

  static List<Rule> rules() {
    return RuleRegistry.all();
  }

  @Test
  void listsEveryRuleClassThatThereIs() {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("keenward.core.rules");
    List<String> written =
        classes.stream()
            .filter(each -> each.isAssignableTo(Rule.class) && !each.isInterface())
            .map(JavaClass::getName)
            .toList();
    assertThat(rules())
        .extracting(rule -> rule.getClass().getName())
        .containsExactlyInAnyOrderElementsOf(written);
  }

  @Test
  void givesEachCodeAndEachFaultNameToOneRule() {
    assertThat(rules()).extracting(rule -> rule.card().code()).doesNotHaveDuplicates();
    assertThat(rules()).extracting(rule -> rule.card().fault()).doesNotHaveDuplicates();
  }

  @Test
  void keepsFamiliesTogetherAndNumbersRising() {
    assertThat(rules()).extracting(rule -> rule.card().family()).isSorted();
    for (RuleFamily family : RuleFamily.values()) {
      assertThat(rules().stream().map(Rule::card).filter(card -> card.family() == family))
          .extracting(RuleCard::code)
          .isSorted();
    }
  }

  @Test
  void findsARuleByItsCode() {
    assertThat(RuleRegistry.find("ADR-01")).isPresent();
    assertThat(RuleRegistry.find("ADR-99")).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void statesEverythingOfTheContract(Rule rule) {
    RuleCard card = rule.card();
    assertThat(card.code()).matches(card.family().letters() + "-[0-9]{2}");
    assertThat(card.fault()).matches("[a-z0-9]+(-[a-z0-9]+)+");
    assertThat(card.since()).matches("[0-9]+\\.[0-9]+");
    assertThat(card.sources()).isNotEmpty();
    assertThat(card.sources()).extracting(Source::words).noneMatch(String::isBlank);
    assertThat(List.of(card.purpose(), card.consequence(), card.limits(), card.remedy()))
        .allSatisfy(text -> assertThat(text).isNotBlank().endsWith("."));
    assertThat(card.brokenExample()).startsWith("keenward: 1\n");
    assertThat(card.mendedExample()).startsWith("keenward: 1\n").isNotEqualTo(card.brokenExample());
    assertThat(card.nearMiss())
        .startsWith("keenward: 1\n")
        .isNotEqualTo(card.mendedExample())
        .isNotEqualTo(card.brokenExample());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void namesTheFaultAsItsClassDoes(Rule rule) {
    String words = rule.getClass().getSimpleName().replaceAll("([a-z0-9])([A-Z])", "$1-$2");
    assertThat(rule.card().fault()).isEqualToIgnoringCase(words);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void readsAPageWhereItSaysSo(Rule rule) {
    assertThat(rule.card().sources())
        .allSatisfy(source ->
            assertThat(source.page().isEmpty())
                .as(source.words())
                .isEqualTo(source.how() != Source.How.READ));
  }
}
