package keenward.endtoend.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import java.util.Set;

/** What keeps core pure: values in, values out, the same on every machine and at every hour. */
final class Purity {

  /** The only packages from outside that core may use. */
  static final Set<String> ALLOWED_PACKAGES =
      Set.of(
          "java.lang",
          "java.lang.annotation",
          "java.lang.invoke",
          "java.lang.runtime",
          "java.math",
          "java.nio.charset",
          "java.time",
          "java.time.format",
          "java.time.temporal",
          "java.util",
          "java.util.function",
          "java.util.regex",
          "java.util.stream",
          "org.jspecify.annotations");

  /** The library that packages of core may use beside them; see decision 0008. */
  private static final String AREAS = "org.locationtech.jts.";

  private static final List<String> USE_AREAS =
      List.of("building.plane", "building.coverage", "building.walking");

  private static final String FILES = "core reads and writes nothing: files does, and hands values";
  private static final String CLOCK = "core has no clock: take the time as an argument";
  private static final String DICE = "core rolls no dice: take the random source as an argument";
  private static final String THREADS = "core starts and knows no threads: the caller does";
  private static final String MACHINE = "core must give the same result on every machine";

  static final List<Ban> BANS =
      List.of(
          Ban.ofClass("java.util.Scanner", FILES),
          Ban.ofMethodsAnywhere(FILES, "printStackTrace()"),
          Ban.ofClass("java.time.Clock", CLOCK),
          Ban.ofClass("java.time.InstantSource", CLOCK),
          Ban.ofMethodsOfPackage("java.time", CLOCK, "now"),
          Ban.ofMethodsOfPackage("java.time", MACHINE, "systemDefault"),
          Ban.ofClass("java.util.Timer", CLOCK),
          Ban.ofClass("java.util.Date", CLOCK),
          Ban.ofClass("java.util.Calendar", CLOCK),
          Ban.ofClass("java.util.GregorianCalendar", CLOCK),
          Ban.ofClass("java.util.TimeZone", MACHINE),
          Ban.ofClass("java.util.Random", DICE),
          Ban.ofClass("java.util.SplittableRandom", DICE),
          Ban.ofMethods("java.lang.Math", DICE, "random"),
          Ban.ofMethods("java.lang.StrictMath", DICE, "random"),
          Ban.ofMethods("java.util.UUID", DICE, "randomUUID"),
          Ban.ofMethods("java.util.Collections", DICE, "shuffle"),
          Ban.ofClass("java.lang.Thread", THREADS),
          Ban.ofClass("java.lang.ThreadLocal", THREADS),
          Ban.ofClass("java.lang.ThreadGroup", THREADS),
          Ban.ofClass("java.lang.ScopedValue", THREADS),
          Ban.ofMethodsAnywhere(THREADS, "parallelStream()"),
          Ban.ofMethodsOfPackage("java.util.stream", THREADS, "parallel"),
          Ban.ofClass("java.lang.Process", FILES),
          Ban.ofClass("java.lang.ProcessBuilder", FILES),
          Ban.ofClass("java.lang.Runtime", MACHINE),
          Ban.ofClass("java.lang.ClassLoader", MACHINE),
          Ban.ofMethods("java.lang.Class", FILES, "getResource", "getResourceAsStream"),
          Ban.ofMethods("java.lang.Integer", MACHINE, "getInteger"),
          Ban.ofMethods("java.lang.Boolean", MACHINE, "getBoolean"),
          Ban.ofMethods("java.lang.Long", MACHINE, "getLong"),
          Ban.ofMethods("java.util.Locale", MACHINE, "getDefault"),
          Ban.ofMethods("java.nio.charset.Charset", MACHINE, "defaultCharset"),
          Ban.ofMethods(
              "java.lang.String",
              MACHINE + ": build the text, or format by Locale.ROOT",
              "formatted",
              "format(java.lang.String, [Ljava.lang.Object;)"),
          Ban.ofMethods(
              "java.lang.String", MACHINE + ": name Locale.ROOT", "toUpperCase()", "toLowerCase()"),
          Ban.ofMethods("java.lang.String", MACHINE + ": name the charset", "getBytes()"));

  private Purity() {}

  static ArchRule coreIsPure(House house) {
    return ArchRuleDefinition.classes()
        .that(House.areIn(house.core()))
        .should(
            new ArchCondition<JavaClass>("be pure") {
              @Override
              public void check(JavaClass user, ConditionEvents events) {
                for (Dependency dependency : user.getDirectDependenciesFromSelf()) {
                  checkDependency(house, user, dependency, events);
                }
                for (JavaAccess<?> access : user.getAccessesFromSelf()) {
                  checkAccess(user, access, events);
                }
              }
            })
        .because(
            "the same input must give the same output on a server, in a batch and in a browser")
        .allowEmptyShould(true);
  }

  private static void checkDependency(
      House house, JavaClass user, Dependency dependency, ConditionEvents events) {
    JavaClass used = dependency.getTargetClass().getBaseComponentType();
    if (used.isPrimitive() || House.isIn(used, house.core())) {
      return;
    }
    boolean isTimeUnit = used.getName().equals("java.util.concurrent.TimeUnit");
    boolean isArea =
        used.getPackageName().startsWith(AREAS)
            && USE_AREAS.stream().anyMatch(user.getPackageName()::endsWith);
    if (!ALLOWED_PACKAGES.contains(used.getPackageName()) && !isTimeUnit && !isArea) {
      events.add(
          House.violation(
              user,
              "core may use nothing of "
                  + used.getPackageName()
                  + " (it does no input or output and knows no library): "
                  + dependency.getDescription()));
    }
    for (Ban ban : BANS) {
      if (ban.forbidsClass(used)) {
        events.add(House.violation(user, ban.reason() + ": " + dependency.getDescription()));
      }
    }
  }

  private static void checkAccess(JavaClass user, JavaAccess<?> access, ConditionEvents events) {
    for (Ban ban : BANS) {
      if (ban.forbidsAccess(access)) {
        events.add(House.violation(user, ban.reason() + ": " + access.getDescription()));
      }
    }
    boolean isSystem = access.getTargetOwner().getName().equals("java.lang.System");
    if (isSystem && !access.getTarget().getName().equals("arraycopy")) {
      events.add(
          House.violation(
              user,
              "core neither prints nor asks the machine for the time or a setting: "
                  + access.getDescription()));
    }
  }
}
