package keenward.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class MainTest {

  @Test
  void printsItsNameAndTheVersionThatTheBuildGaveIt() {
    StringWriter printed = new StringWriter();

    int exitCode = Main.commandLine().setOut(new PrintWriter(printed)).execute("--version");

    assertThat(exitCode).isZero();
    assertThat(printed.toString().strip()).matches("keenward \\d+\\.\\d+\\.\\d+");
  }

  @Test
  void endsWithTwoAndAnExplanationWhenItIsUsedWrongly() {
    StringWriter printed = new StringWriter();

    int exitCode = Main.commandLine().setErr(new PrintWriter(printed)).execute("--no-such-option");

    assertThat(exitCode).isEqualTo(2);
    assertThat(printed.toString()).contains("--no-such-option");
  }
}
