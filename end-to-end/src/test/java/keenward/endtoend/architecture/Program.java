package keenward.endtoend.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** Keenward's own house and its classes, read once. */
final class Program {

  static final House HOUSE = new House("keenward");

  /** All classes but those of the tests. */
  static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(HOUSE.root());

  private Program() {}
}
