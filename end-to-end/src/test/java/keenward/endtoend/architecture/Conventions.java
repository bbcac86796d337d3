package keenward.endtoend.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import org.jspecify.annotations.NullMarked;

/** Habits that every package keeps. */
final class Conventions {

  private static final List<String> TEST_ANNOTATIONS =
      List.of(
          "org.junit.jupiter.api.Test",
          "org.junit.jupiter.api.RepeatedTest",
          "org.junit.jupiter.api.TestFactory",
          "org.junit.jupiter.params.ParameterizedTest");

  private static final String WRITTEN_BY_THE_TEMPLATE_COMPILER = "keenward.web.generated..";

  private Conventions() {}

  static ArchRule everyPackageIsNullMarked() {
    return ArchRuleDefinition.classes()
        .that()
        .resideOutsideOfPackage(WRITTEN_BY_THE_TEMPLATE_COMPILER)
        .should(
            new ArchCondition<JavaClass>("be in a package that is @NullMarked") {
              @Override
              public void check(JavaClass javaClass, ConditionEvents events) {
                if (!javaClass.getPackage().isAnnotatedWith(NullMarked.class)) {
                  events.add(
                      House.violation(
                          javaClass,
                          javaClass.getName()
                              + ": the package "
                              + javaClass.getPackageName()
                              + " has no package-info.java with @NullMarked"));
                }
              }
            })
        .because("elsewhere NullAway checks nothing and says nothing")
        .allowEmptyShould(true);
  }

  static ArchRule testsAreInClassesNamedTest() {
    return ArchRuleDefinition.classes()
        .should(
            new ArchCondition<JavaClass>("hold tests only when named XTest") {
              @Override
              public void check(JavaClass javaClass, ConditionEvents events) {
                boolean isNamed = outermost(javaClass).getSimpleName().endsWith("Test");
                boolean holdsTests = javaClass.getMethods().stream().anyMatch(Conventions::isTest);
                if (holdsTests
                    && !isNamed
                    && !javaClass.getModifiers().contains(JavaModifier.ABSTRACT)) {
                  events.add(House.violation(javaClass, javaClass.getName() + " holds tests"));
                }
              }
            })
        .because("the build runs only classes named XTest: tests elsewhere would never run")
        .allowEmptyShould(true);
  }

  private static boolean isTest(JavaMethod method) {
    return TEST_ANNOTATIONS.stream().anyMatch(method::isAnnotatedWith);
  }

  private static JavaClass outermost(JavaClass javaClass) {
    JavaClass outer = javaClass;
    while (outer.getEnclosingClass().isPresent()) {
      outer = outer.getEnclosingClass().get();
    }
    return outer;
  }
}
