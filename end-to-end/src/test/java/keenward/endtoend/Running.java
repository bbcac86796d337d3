package keenward.endtoend;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A program that was started. Closing it ends it at once. */
public final class Running implements AutoCloseable {

  private static final Duration PATIENCE = Duration.ofMinutes(5);

  private final Process process;
  private final Path output;
  private final Path errors;

  private Running(Process process, Path output, Path errors) {
    this.process = process;
    this.output = output;
    this.errors = errors;
  }

  /** Starts what {@code builder} says, without standard input. */
  public static Running start(ProcessBuilder builder) throws IOException {
    Path output = Files.createTempFile("keenward-output", ".txt");
    Path errors = Files.createTempFile("keenward-errors", ".txt");
    output.toFile().deleteOnExit();
    errors.toFile().deleteOnExit();
    Process process =
        builder
            .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
            .redirectOutput(output.toFile())
            .redirectError(errors.toFile())
            .start();
    return new Running(process, output, errors);
  }

  /** Waits for the end and tells what came of it. */
  public Finished finish() throws IOException, InterruptedException {
    if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
      close();
      throw new AssertionError("did not end within " + PATIENCE + ": " + told());
    }
    return new Finished(process.exitValue(), read(output), read(errors));
  }

  /** Waits until the output has a match of {@code pattern}. */
  public Matcher awaitOutput(Pattern pattern) throws IOException, InterruptedException {
    Instant deadline = Instant.now().plus(PATIENCE);
    while (Instant.now().isBefore(deadline)) {
      boolean ended = !process.isAlive();
      Matcher matcher = pattern.matcher(read(output));
      if (matcher.find()) {
        return matcher;
      }
      if (ended) {
        throw new AssertionError("ended without writing " + pattern + ": " + told());
      }
      Thread.sleep(50);
    }
    throw new AssertionError("did not write " + pattern + " in time: " + told());
  }

  /** The process, to send it a signal or to ask for its command. */
  public ProcessHandle handle() {
    return process.toHandle();
  }

  private String told() throws IOException {
    return read(output) + read(errors);
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  @Override
  public void close() {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
  }
}
