package keenward.endtoend.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvent;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The rooms of a house and the packages of its core, each with what it may use.
 *
 * @param root the package that all rooms are in
 */
record House(String root) {

  /**
   * Each room and the rooms that it may use. Only the use cases call the rooms that do the work.
   */
  static final Map<String, Set<String>> ROOMS =
      Map.of(
          "core", Set.of(),
          "files", Set.of("core"),
          "drawing", Set.of("core"),
          "papers", Set.of("core", "drawing"),
          "usecases", Set.of("core", "files", "drawing", "papers"),
          "web", Set.of("core", "usecases"),
          "cli", Set.of("core", "usecases", "web"),
          "inbrowser", Set.of("core"));

  /** The packages of core; each may use only those before it. */
  static final List<String> CORE_PACKAGES =
      List.of(
          "progress",
          "quantities",
          "plan",
          "building",
          "electrical",
          "radio",
          "reporting",
          "rehearsal",
          "dialogue",
          "proof",
          "history",
          "rules");

  ArchRule roomsUseOnlyRoomsAboveThem() {
    return ArchRuleDefinition.classes()
        .that(areIn(root))
        .should(
            new ArchCondition<JavaClass>("use only the rooms that their own may use") {
              @Override
              public void check(JavaClass user, ConditionEvents events) {
                String room = roomOf(user);
                Set<String> allowed = ROOMS.get(room);
                if (allowed == null) {
                  events.add(
                      violation(
                          user, user.getName() + " is in no known room; the rooms are " + ROOMS));
                  return;
                }
                for (Dependency dependency : user.getDirectDependenciesFromSelf()) {
                  JavaClass used = dependency.getTargetClass().getBaseComponentType();
                  if (isIn(used, root)
                      && !roomOf(used).equals(room)
                      && !allowed.contains(roomOf(used))) {
                    events.add(
                        violation(user, room + " may use " + allowed + "; " + told(dependency)));
                  }
                }
              }
            })
        .because(
            "a change to a face or a file format must never reach the rooms that compute:"
                + " move what both need up, or hand it over as a value of core")
        .allowEmptyShould(true);
  }

  ArchRule corePackagesUseOnlyThoseBeforeThem() {
    return ArchRuleDefinition.classes()
        .that(areIn(core()))
        .should(
            new ArchCondition<JavaClass>("use only the packages of core before their own") {
              @Override
              public void check(JavaClass user, ConditionEvents events) {
                int place = CORE_PACKAGES.indexOf(corePackageOf(user));
                if (place < 0) {
                  events.add(
                      violation(
                          user,
                          user.getName() + " is in no known package of core: " + CORE_PACKAGES));
                  return;
                }
                for (Dependency dependency : user.getDirectDependenciesFromSelf()) {
                  JavaClass used = dependency.getTargetClass().getBaseComponentType();
                  if (isIn(used, core()) && CORE_PACKAGES.indexOf(corePackageOf(used)) > place) {
                    events.add(violation(user, told(dependency)));
                  }
                }
              }
            })
        .because(
            "core is read from the bottom up, in the order "
                + CORE_PACKAGES
                + ": what a lower package needs is handed to it as an argument")
        .allowEmptyShould(true);
  }

  ArchRule packagesHaveNoCycles() {
    return SlicesRuleDefinition.slices()
        .matching(root + ".(**)")
        .should()
        .beFreeOfCycles()
        .because("packages in a cycle can only be understood, tested and moved together")
        .allowEmptyShould(true);
  }

  String core() {
    return root + ".core";
  }

  String corePackageOf(JavaClass javaClass) {
    return nextPart(javaClass, core());
  }

  private String roomOf(JavaClass javaClass) {
    return nextPart(javaClass, root);
  }

  private static String nextPart(JavaClass javaClass, String parent) {
    String name = javaClass.getPackageName();
    if (name.length() <= parent.length()) {
      return "";
    }
    String rest = name.substring(parent.length() + 1);
    int dot = rest.indexOf('.');
    return dot < 0 ? rest : rest.substring(0, dot);
  }

  static boolean isIn(JavaClass javaClass, String packageName) {
    return javaClass.getPackageName().equals(packageName)
        || javaClass.getPackageName().startsWith(packageName + ".");
  }

  static DescribedPredicate<JavaClass> areIn(String packageName) {
    return DescribedPredicate.describe(
        "are in " + packageName, javaClass -> isIn(javaClass, packageName));
  }

  static ConditionEvent violation(JavaClass where, String what) {
    return SimpleConditionEvent.violated(where, what);
  }

  private static String told(Dependency dependency) {
    return dependency.getDescription();
  }
}
