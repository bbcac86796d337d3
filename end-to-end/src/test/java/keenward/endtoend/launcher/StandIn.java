package keenward.endtoend.launcher;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;

/** A small program in Keenward's stead, which tells how it was called. */
final class StandIn {

  private static final String PROGRAM =
      """
      package keenward.cli;

      import java.nio.charset.StandardCharsets;

      public final class Main {
        public static void main(String[] arguments) throws Exception {
          String first = arguments.length == 0 ? "" : arguments[0];
          switch (first) {
            case "exit" -> System.exit(Integer.parseInt(arguments[1]));
            case "sleep" -> {
              System.out.println("sleeping");
              Thread.sleep(60_000);
            }
            default -> {
              for (String argument : arguments) {
                System.out.println("<" + argument + ">");
              }
              System.out.println("home " + System.getProperty("keenward.home"));
              try (var edition = Main.class.getResourceAsStream("edition.txt")) {
                System.out.println(
                    "edition " + new String(edition.readAllBytes(), StandardCharsets.UTF_8));
              }
            }
          }
        }
      }
      """;

  /** Its one class, compiled once for all tests. */
  static final byte[] COMPILED = compile();

  private StandIn() {}

  private static byte[] compile() {
    try {
      Path folder = Files.createTempDirectory("stand-in");
      Path source = folder.resolve("Main.java");
      Files.writeString(source, PROGRAM);
      JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler());
      int failed = compiler.run(null, null, null, "-d", folder.toString(), source.toString());
      if (failed != 0) {
        throw new IllegalStateException("the stand-in program does not compile");
      }
      return Files.readAllBytes(folder.resolve("keenward/cli/Main.class"));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
