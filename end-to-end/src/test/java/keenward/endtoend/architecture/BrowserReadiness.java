package keenward.endtoend.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What the packages that run in a browser may not use, with all of core that they lean on. */
final class BrowserReadiness {

  /** The packages of core that are compiled for the browser. */
  static final List<String> PACKAGES = List.of("rehearsal", "dialogue");

  private static final String MISSING = "the browser's class library lacks it";

  static final List<Ban> BANS =
      List.of(
          Ban.ofPackage("java.security", MISSING + ": hash outside core"),
          Ban.ofPackage("java.time.format", MISSING + ": build the text"),
          Ban.ofPackage("java.lang.reflect", MISSING + ": reflection is not compiled"),
          Ban.ofClass("java.util.HexFormat", MISSING + ": Character.forDigit does"),
          Ban.ofClass("java.util.UUID", MISSING),
          Ban.ofClass("java.util.stream.Gatherers", MISSING + ": use a loop"),
          Ban.ofClass("java.util.stream.Gatherer", MISSING + ": use a loop"),
          Ban.ofClass("java.util.SplittableRandom", MISSING),
          Ban.ofMethods("java.lang.String", MISSING + ": use split", "lines"),
          Ban.ofMethods(
              "java.lang.Class",
              MISSING + ": reflection is not compiled",
              "forName",
              "getMethod",
              "getMethods",
              "getDeclaredMethod",
              "getDeclaredMethods",
              "getField",
              "getFields",
              "getDeclaredField",
              "getDeclaredFields",
              "getRecordComponents"));

  private BrowserReadiness() {}

  static ArchRule compilesForTheBrowser(House house, JavaClasses all) {
    Set<JavaClass> reached = reachedInCore(house, all);
    return ArchRuleDefinition.classes()
        .that(DescribedPredicate.describe("run in the browser", reached::contains))
        .should(
            new ArchCondition<JavaClass>("use only what the browser's class library has") {
              @Override
              public void check(JavaClass user, ConditionEvents events) {
                for (Ban ban : BANS) {
                  for (Dependency dependency : user.getDirectDependenciesFromSelf()) {
                    if (ban.forbidsClass(dependency.getTargetClass().getBaseComponentType())) {
                      events.add(
                          House.violation(user, ban.reason() + ": " + dependency.getDescription()));
                    }
                  }
                  for (JavaAccess<?> access : user.getAccessesFromSelf()) {
                    if (ban.forbidsAccess(access)) {
                      events.add(
                          House.violation(user, ban.reason() + ": " + access.getDescription()));
                    }
                  }
                }
              }
            })
        .because("the same rehearsal and dialogue run in the technician's browser")
        .allowEmptyShould(true);
  }

  /** The classes of the browser's packages and those of core that they use, directly or not. */
  static Set<JavaClass> reachedInCore(House house, JavaClasses all) {
    Deque<JavaClass> toVisit = new ArrayDeque<>();
    for (JavaClass javaClass : all) {
      if (House.isIn(javaClass, house.core())
          && PACKAGES.contains(house.corePackageOf(javaClass))) {
        toVisit.add(javaClass);
      }
    }
    Set<JavaClass> reached = new HashSet<>(toVisit);
    while (!toVisit.isEmpty()) {
      for (Dependency dependency : toVisit.remove().getDirectDependenciesFromSelf()) {
        JavaClass used = dependency.getTargetClass().getBaseComponentType();
        if (House.isIn(used, house.core()) && reached.add(used)) {
          toVisit.add(used);
        }
      }
    }
    return reached;
  }
}
