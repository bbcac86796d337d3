package keenward.endtoend.architecture;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Something that code may not use, and why.
 *
 * @param scope what {@code owner} names
 * @param owner a class or a package, by its full name; empty for methods anywhere
 * @param members the names, or the names with parameter types, of what is banned of the owner
 * @param reason why, and what to do instead
 */
record Ban(Scope scope, String owner, Set<String> members, String reason) {

  /** What the owner of a ban names. */
  enum Scope {
    WHOLE_CLASS,
    METHODS_OF_CLASS,
    METHODS_OF_PACKAGE,
    METHODS_ANYWHERE,
    WHOLE_PACKAGE
  }

  static Ban ofClass(String name, String reason) {
    return new Ban(Scope.WHOLE_CLASS, name, Set.of(), reason);
  }

  static Ban ofPackage(String name, String reason) {
    return new Ban(Scope.WHOLE_PACKAGE, name, Set.of(), reason);
  }

  static Ban ofMethods(String className, String reason, String... names) {
    return new Ban(Scope.METHODS_OF_CLASS, className, Set.of(names), reason);
  }

  static Ban ofMethodsAnywhere(String reason, String... names) {
    return new Ban(Scope.METHODS_ANYWHERE, "", Set.of(names), reason);
  }

  static Ban ofMethodsOfPackage(String packageName, String reason, String... names) {
    return new Ban(Scope.METHODS_OF_PACKAGE, packageName, Set.of(names), reason);
  }

  boolean forbidsClass(JavaClass used) {
    return switch (scope) {
      case WHOLE_CLASS -> used.getName().equals(owner) || used.getName().startsWith(owner + "$");
      case WHOLE_PACKAGE -> House.isIn(used, owner);
      case METHODS_OF_CLASS, METHODS_OF_PACKAGE, METHODS_ANYWHERE -> false;
    };
  }

  boolean forbidsAccess(JavaAccess<?> access) {
    boolean ownerMatches =
        switch (scope) {
          case METHODS_OF_CLASS -> access.getTargetOwner().getName().equals(owner);
          case METHODS_OF_PACKAGE -> access.getTargetOwner().getPackageName().equals(owner);
          case METHODS_ANYWHERE -> true;
          case WHOLE_CLASS, WHOLE_PACKAGE -> false;
        };
    return ownerMatches
        && (members.contains(access.getTarget().getName())
            || members.contains(signatureOf(access.getTarget())));
  }

  private static String signatureOf(AccessTarget target) {
    if (target instanceof AccessTarget.CodeUnitAccessTarget codeUnit) {
      return codeUnit.getRawParameterTypes().stream()
          .map(JavaClass::getName)
          .collect(Collectors.joining(", ", codeUnit.getName() + "(", ")"));
    }
    return target.getName();
  }
}
