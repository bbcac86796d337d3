package keenward.endtoend.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import keenward.endtoend.Repository;
import org.junit.jupiter.api.Test;

/** Keenward's own house stands as it was laid out. */
class HouseTest {

  @Test
  void roomsUseOnlyRoomsAboveThem() {
    Program.HOUSE.roomsUseOnlyRoomsAboveThem().check(Program.CLASSES);
  }

  @Test
  void corePackagesUseOnlyThoseBeforeThem() {
    Program.HOUSE.corePackagesUseOnlyThoseBeforeThem().check(Program.CLASSES);
  }

  @Test
  void packagesHaveNoCycles() {
    Program.HOUSE.packagesHaveNoCycles().check(Program.CLASSES);
  }

  @Test
  void everyPackageIsNullMarked() throws IOException {
    Conventions.everyPackageIsNullMarked().check(compiled("classes", "test-classes"));
  }

  @Test
  void testsAreInClassesNamedTest() throws IOException {
    Conventions.testsAreInClassesNamedTest().check(compiled("test-classes"));
  }

  /** Without this, a package that the importer does not see would be judged by no rule. */
  @Test
  void everyPackageWithSourcesIsAmongThoseJudged() throws IOException {
    Set<String> judged =
        Program.CLASSES.stream().map(JavaClass::getPackageName).collect(Collectors.toSet());
    Set<String> written = new TreeSet<>();
    for (Path module : Repository.modules()) {
      Path sources = module.resolve("src/main/java");
      if (Files.isDirectory(sources)) {
        try (Stream<Path> files = Files.walk(sources)) {
          files
              .filter(file -> file.toString().endsWith(".java"))
              .filter(file -> !file.endsWith("package-info.java"))
              .map(file -> sources.relativize(file.getParent()).toString().replace('/', '.'))
              .forEach(written::add);
        }
      }
    }

    assertThat(written).contains("keenward.core.plan", "keenward.cli");
    assertThat(judged).containsAll(written);
  }

  private static JavaClasses compiled(String... folderNames) throws IOException {
    List<Path> folders = new ArrayList<>();
    for (Path module : Repository.modules()) {
      for (String name : folderNames) {
        Path folder = module.resolve(Repository.buildFolder()).resolve(name);
        if (Files.isDirectory(folder)) {
          folders.add(folder);
        }
      }
    }
    assertThat(folders).isNotEmpty();
    return new ClassFileImporter()
        .withImportOption(location -> !location.contains("/architecture/crooked/"))
        .importPaths(folders);
  }
}
